import { describe, expect, test } from 'vitest';
import { measureSpread } from '#core/layout/measure-spread.ts';

describe('measureSpread', () => {
  test('measureSpread of a chessboard is even, its middle that of the quilt', () => {
    const cells = ['ABAB', 'BABA', 'ABAB', 'BABA'];
    expect(measureSpread(cells, 0)).toEqual({ count: 8, rows: 0, columns: 0, centre: 0 });
  });

  test('measureSpread of a print in the top row alone: by hand', () => {
    // Fair share a row 4/2 = 2, so 2 too many; a column 1 of 4/4 = 1; the middle half a row up.
    expect(measureSpread(['AAAA', 'BBBB'], 0)).toEqual({
      count: 4,
      rows: 2,
      columns: 0,
      centre: 0.5,
    });
    expect(measureSpread(['AAAA', 'BBBB'], 1)).toEqual({
      count: 4,
      rows: 2,
      columns: 0,
      centre: 0.5,
    });
  });

  test('measureSpread of one block in a corner of 3×3 is √2 from the middle', () => {
    expect(measureSpread(['BBB', 'BBB', 'BBA'], 0).centre).toBeCloseTo(Math.SQRT2, 12);
  });

  test('measureSpread of a print without blocks has no middle', () => {
    expect(measureSpread(['BB'], 0)).toEqual({ count: 0, rows: 0, columns: 0 });
  });
});
