import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { repeatPrints } from '#core/layout/repeat-prints.ts';
import { anyLayout, tallyPrints } from '../../support/layouts.ts';

describe('repeatPrints', () => {
  test('repeatPrints(4×2, shift 2) moves the second row by two', () => {
    expect(repeatPrints({ columns: 4, rows: 2 }, [2, 2, 2, 2], 2)).toEqual(['ABCD', 'CDAB']);
  });

  test('repeatPrints(5×5, five prints, shift 2) touches nowhere, not even at a corner', () => {
    const cells = repeatPrints({ columns: 5, rows: 5 }, [5, 5, 5, 5, 5], 2) ?? [];
    expect(countTouching(cells)).toEqual({ sides: 0, corners: 0 });
  });

  test('repeatPrints gives the commonest place to the print with most blocks', () => {
    // Five cells of three prints in a row: places 0, 1, 2, 0, 1; the third print has one block only.
    expect(repeatPrints({ columns: 5, rows: 1 }, [2, 1, 2], 0)).toEqual(['ACBAC']);
  });

  test('repeatPrints changes single blocks until the counts are those wanted', () => {
    const cells = repeatPrints({ columns: 4, rows: 4 }, [6, 4, 3, 3], 2) ?? [];
    expect(tallyPrints(cells, 4)).toEqual([6, 4, 3, 3]);
  });

  test('repeatPrints changes the block whose change brings the fewest like prints together', () => {
    const grid = { columns: 5, rows: 5 };
    const plain = repeatPrints(grid, [5, 5, 5, 5, 5], 2) ?? [];
    const weigh = (cells: readonly string[]) => {
      const { sides, corners } = countTouching(cells);
      return 100 * sides + corners;
    };
    const changed = plain.flatMap((line, row) =>
      [...line].flatMap((print, column) =>
        print === 'E'
          ? [plain.with(row, `${line.slice(0, column)}A${line.slice(column + 1)}`)]
          : [],
      ),
    );
    const weights = changed.map(weigh);
    const mended = repeatPrints(grid, [6, 5, 5, 5, 4], 2) ?? [];
    expect(weigh(mended)).toBe(Math.min(...weights));
    expect(Math.max(...weights)).toBeGreaterThan(Math.min(...weights));
  });

  test('repeatPrints of very unequal counts on a great quilt gives up', () => {
    expect(repeatPrints({ columns: 50, rows: 50 }, [2400, 50, 25, 25], 2)).toBeUndefined();
  });

  test('repeatPrints keeps the counts, whatever the shift', () => {
    fc.assert(
      fc.property(anyLayout(), fc.integer({ min: 0, max: 5 }), ({ grid, counts }, shift) => {
        const cells = repeatPrints(grid, counts, shift);
        if (cells === undefined) throw new Error('A quilt this small is always laid');
        expect(cells.every((line) => line.length === grid.columns)).toBe(true);
        expect(tallyPrints(cells, counts.length)).toEqual(counts);
      }),
    );
  });
});
