import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isQuilt, proposeGrids } from '#core/block/propose-grids.ts';
import { sewnSize } from '#core/block/size-quilt.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const block = fc
  .record({ cut: fc.integer({ min: 90, max: 400 }), seam: fc.integer({ min: 3, max: 40 }) })
  .map(deepFreeze);
const side = fc.integer({ min: 150, max: 5000 });

describe('proposeGrids', () => {
  test('proposeGrids(250 by 320, cut 120, seam 10) is 2 or 3 columns by exactly 3 rows', () => {
    expect(proposeGrids({ width: 250, height: 320 }, { cut: 120, seam: 10 })).toEqual([
      { columns: 2, rows: 3 },
      { columns: 3, rows: 3 },
    ]);
  });

  test('proposeGrids of less than a block is one block', () => {
    expect(proposeGrids({ width: 30, height: 30 }, { cut: 120, seam: 10 })).toEqual([
      { columns: 1, rows: 1 },
    ]);
  });

  test('proposeGrids keeps 100 columns where 101 would be the next, and gives none beyond', () => {
    const narrow = { cut: 60, seam: 10 };
    const columns = (width: number) =>
      proposeGrids({ width, height: 60 }, narrow).map((grid) => grid.columns);
    expect(columns(99.5 * 40 + 20)).toEqual([99, 100]);
    expect(columns(100.4 * 40 + 20)).toEqual([100]);
    expect(columns(101 * 40 + 20)).toEqual([]);
  });

  test('proposeGrids gives back the grid that a size was sewn from, and no other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 12 }),
        block,
        (columns, rows, one) => {
          const sewn = deepFreeze(sewnSize({ columns, rows }, one));
          expect(proposeGrids(sewn, one)).toEqual([{ columns, rows }]);
        },
      ),
    );
  });

  test('proposeGrids gives one to four grids, each way within one face of the wish where it can', () => {
    fc.assert(
      fc.property(side, side, block, (width, height, one) => {
        const grids = proposeGrids({ width, height }, one);
        expect(grids.length).toBeLessThanOrEqual(4);
        for (const grid of grids) {
          const sewn = sewnSize(grid, one);
          const face = one.cut - 2 * one.seam;
          if (grid.columns > 1) expect(Math.abs(sewn.width - width)).toBeLessThan(face);
          if (grid.rows > 1) expect(Math.abs(sewn.height - height)).toBeLessThan(face);
          expect(isQuilt(grid, one)).toBe(true);
        }
      }),
    );
  });
});

describe('isQuilt', () => {
  test('isQuilt(50×50) is true and isQuilt(50×51) false: 2,500 blocks are the most', () => {
    expect(isQuilt({ columns: 50, rows: 50 }, { cut: 100, seam: 10 })).toBe(true);
    expect(isQuilt({ columns: 50, rows: 51 }, { cut: 100, seam: 10 })).toBe(false);
  });

  test('isQuilt is true at exactly 6 m a side, outer allowances included, and false beyond', () => {
    for (const grid of [
      { columns: 20, rows: 1 },
      { columns: 1, rows: 20 },
    ]) {
      expect(isQuilt(grid, { cut: 490, seam: 100 })).toBe(true);
      expect(isQuilt(grid, { cut: 490.2, seam: 100 })).toBe(false);
    }
  });
});
