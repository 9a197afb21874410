import { describe, expect, test } from 'vitest';
import { proveFewest } from '#core/layout/prove-fewest.ts';
import { fewestByFrontier } from '../../support/fewest-by-frontier.ts';

describe('proveFewest', () => {
  test('proveFewest is what a table over all layouts says, for 3×4 and five prints', () => {
    for (const [key, fewest] of fewestByFrontier({ columns: 3, rows: 4 }, 5, 'corners')) {
      const counts = key.split(',').map(Number);
      const task = { grid: { columns: 3, rows: 4 }, counts, touch: 'corners', seed: 1 } as const;
      expect([key, proveFewest(task, 1_000_000)]).toEqual([key, fewest]);
    }
  });

  test('proveFewest of four prints that cannot be paired is one at least, however few the steps', () => {
    const task = {
      grid: { columns: 30, rows: 30 },
      counts: [224, 226, 225, 225],
      touch: 'corners',
      seed: 1,
    } as const;
    expect(proveFewest(task, 10)).toBeGreaterThanOrEqual(1);
    expect(proveFewest({ ...task, counts: [225, 225, 225, 225] }, 10)).toBe(0);
  });
});
