import { describe, expect, test } from 'vitest';
import { NUMBER_LIMITS } from '#core/limits.ts';
import { PACES } from '#core/tables/paces.ts';

describe('PACES', () => {
  test('PACES say what they are the minutes of, each differently, with a source', () => {
    const rows = Object.values(PACES);
    expect(new Set(rows.map((row) => row.of)).size).toBe(rows.length);
    for (const row of rows) expect(row.source).not.toBe('');
  });

  test('PACES are above nothing and inside what a request may say', () => {
    for (const { minutes } of Object.values(PACES)) {
      expect(minutes).toBeGreaterThan(NUMBER_LIMITS.pace.least);
      expect(minutes).toBeLessThanOrEqual(NUMBER_LIMITS.pace.most);
    }
  });

  test('PACES: a snip is the quickest thing there is to do', () => {
    const others = Object.entries(PACES).filter(([name]) => name !== 'snip');
    for (const [, { minutes }] of others) expect(minutes).toBeGreaterThan(PACES.snip.minutes);
  });
});
