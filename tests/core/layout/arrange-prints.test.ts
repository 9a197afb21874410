import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrangePrints } from '#core/layout/arrange-prints.ts';
import { countTouching } from '#core/layout/count-touching.ts';
import { proveFewest } from '#core/layout/prove-fewest.ts';
import { anyLayout, equalCounts, tallyPrints } from '../../support/layouts.ts';

describe('arrangePrints', () => {
  test('arrangePrints keeps the counts and does the same each time', () => {
    fc.assert(
      fc.property(anyLayout(), ({ grid, counts }) => {
        const cells = arrangePrints(grid, counts);
        expect(cells).toHaveLength(grid.rows);
        expect(tallyPrints(cells, counts.length)).toEqual(counts);
        expect(arrangePrints(grid, counts)).toEqual(cells);
      }),
    );
  });

  test('arrangePrints of three prints or fewer touches at sides no more than an exact search proves they must', () => {
    fc.assert(
      fc.property(anyLayout(5, 3), ({ grid, counts }) => {
        fc.pre(counts.filter((count) => count > 0).length < 4);
        const fewest = proveFewest({ grid, counts, touch: 'sides', seed: 0 }, 1_000_000);
        expect(countTouching(arrangePrints(grid, counts)).sides).toBe(fewest);
      }),
    );
  });

  test('arrangePrints of two prints alike touches at no side, on any grid up to 10 by 10', () => {
    for (let columns = 1; columns <= 10; columns += 1) {
      for (let rows = 1; rows <= 10; rows += 1) {
        const counts = equalCounts(columns * rows, 2);
        expect(countTouching(arrangePrints({ columns, rows }, counts)).sides).toBe(0);
      }
    }
  });

  test('arrangePrints of five to eight prints alike touches nowhere on any grid up to 10 by 10', () => {
    for (let prints = 5; prints <= 8; prints += 1) {
      for (let columns = 1; columns <= 10; columns += 1) {
        for (let rows = 1; rows <= 10; rows += 1) {
          const counts = equalCounts(columns * rows, prints);
          const cells = arrangePrints({ columns, rows }, counts);
          expect([prints, columns, rows, countTouching(cells)]).toEqual([
            prints,
            columns,
            rows,
            { sides: 0, corners: 0 },
          ]);
        }
      }
    }
  });

  test('arrangePrints of four prints alike touches nowhere where columns or rows are even', () => {
    for (let columns = 1; columns <= 10; columns += 1) {
      for (let rows = 1; rows <= 10; rows += 1) {
        if (columns % 2 === 1 && rows % 2 === 1) continue;
        const cells = arrangePrints({ columns, rows }, equalCounts(columns * rows, 4));
        expect([columns, rows, countTouching(cells)]).toEqual([
          columns,
          rows,
          { sides: 0, corners: 0 },
        ]);
      }
    }
  });
});
