import { describe, expect, test } from 'vitest';
import { SOURCES } from '#core/sources.ts';

describe('SOURCES', () => {
  test('SOURCES are written once each, and say something', () => {
    const texts = Object.values(SOURCES);
    expect(new Set<string>(texts).size).toBe(texts.length);
    for (const text of texts) expect(text.length).toBeGreaterThan(10);
  });

  test('SOURCES name a practice as one that has no source', () => {
    expect(SOURCES.practice).toBe('common practice, no source');
  });
});
