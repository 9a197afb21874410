import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { dealPrints } from '#core/layout/deal-prints.ts';
import { anyLayout, tallyPrints } from '../../support/layouts.ts';

describe('dealPrints', () => {
  test('dealPrints(4×2, four prints alike) touches nowhere', () => {
    expect(dealPrints({ columns: 4, rows: 2 }, [2, 2, 2, 2])).toEqual(['ABCD', 'CDAB']);
  });

  test('dealPrints(one print) lays it everywhere', () => {
    expect(dealPrints({ columns: 3, rows: 2 }, [6])).toEqual(['AAA', 'AAA']);
  });

  test('dealPrints(two prints alike) is a chessboard', () => {
    const cells = dealPrints({ columns: 6, rows: 4 }, [12, 12]);
    expect(countTouching(cells).sides).toBe(0);
  });

  test('dealPrints keeps the counts and fills the grid, and does the same each time', () => {
    fc.assert(
      fc.property(anyLayout(), ({ grid, counts }) => {
        const cells = dealPrints(grid, counts);
        expect(cells.map((line) => line.length)).toEqual(
          Array.from({ length: grid.rows }, () => grid.columns),
        );
        expect(tallyPrints(cells, counts.length)).toEqual(counts);
        expect(dealPrints(grid, counts)).toEqual(cells);
      }),
    );
  });

  test('dealPrints lets a print touch its like only where every print left would', () => {
    fc.assert(
      fc.property(anyLayout(8), ({ grid, counts }) => {
        const cells = dealPrints(grid, counts);
        const laid = cells.join('');
        for (const [index, print] of [...laid].entries()) {
          const row = Math.floor(index / grid.columns);
          const column = index % grid.columns;
          const left = new Set(laid.slice(index));
          const sides = [cells[row]?.[column - 1], cells[row - 1]?.[column]];
          const corners = [cells[row - 1]?.[column - 1], cells[row - 1]?.[column + 1]];
          const isFree = (other: string, around: readonly (string | undefined)[]) =>
            !around.includes(other);
          const some = (around: readonly (string | undefined)[]) =>
            [...left].some((other) => isFree(other, around));
          const all = [...sides, ...corners];
          if (some(all)) expect(isFree(print, all)).toBe(true);
          else if (some(sides)) expect(isFree(print, sides)).toBe(true);
        }
      }),
    );
  });
});
