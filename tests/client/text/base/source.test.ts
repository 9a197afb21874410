import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/base/en.ts';

describe('the words that all elements share in English', () => {
  test('en names cloths and sizes as people write them', () => {
    expect(en.fabric('cotton-batting')).toBe('Cotton batting');
    expect(en.size('california-king')).toBe('California king');
    expect(en.role('backing')).toBe('Backing');
  });
});
