import { describe, expect, test } from 'vitest';
import { searchFewest } from '#core/layout/search-fewest.ts';
import { countTouch, keepsPins } from '../../support/boards.ts';
import { fewestByFrontier } from '../../support/fewest-by-frontier.ts';
import { tallyPrints } from '../../support/layouts.ts';

const task = (columns: number, rows: number, counts: readonly number[]) => ({
  ...{ grid: { columns, rows }, counts, touch: 'corners' as const, seed: 1 },
});

describe('searchFewest', () => {
  test.each(['corners', 'sides'] as const)(
    'searchFewest (%s) finds what a table over all layouts says, for 3×3 and 3×4 and five prints',
    (touch) => {
      for (const [columns, rows] of [
        [3, 3],
        [3, 4],
      ] as const) {
        for (const [key, fewest] of fewestByFrontier({ columns, rows }, 5, touch)) {
          const own = { ...task(columns, rows, key.split(',').map(Number)), touch };
          const found = searchFewest(own, { least: 0, most: 99 }, 1_000_000);
          expect([key, found.fewest]).toEqual([key, fewest]);
          expect(countTouch(found.cells ?? [], touch)).toBe(fewest);
          expect(tallyPrints(found.cells ?? [], 5)).toEqual(own.counts);
        }
      }
    },
  );

  test('searchFewest keeps pins: two A at one corner of a 2×3 grid must touch', () => {
    const fixed = ['AA', '..', '..'];
    const found = searchFewest(
      { ...task(2, 3, [2, 1, 1, 1, 1]), fixed },
      { least: 0, most: 9 },
      10_000,
    );
    expect(found.fewest).toBe(1);
    expect(keepsPins(found.cells ?? [], fixed)).toBe(true);
  });

  test('searchFewest beyond `most` tells only that more must touch', () => {
    expect(searchFewest(task(3, 3, [9]), { least: 0, most: 4 }, 10_000)).toEqual({
      fewest: 5,
      spent: 0,
    });
  });

  test('searchFewest whose steps run out tells what it has proven so far', () => {
    const { fewest, cells } = searchFewest(task(5, 5, [13, 12]), { least: 0, most: 99 }, 50);
    expect(fewest).toBeLessThan(20);
    expect(cells).toBeUndefined();
  });

  test('searchFewest of more prints than one number can tell apart leaves the bound as it was', () => {
    const counts = Array.from({ length: 20 }, () => 20);
    expect(searchFewest(task(20, 20, counts), { least: 0, most: 9 }, 1000)).toEqual({
      fewest: 0,
      spent: 0,
    });
  });
});
