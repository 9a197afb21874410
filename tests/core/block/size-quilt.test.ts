import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sewnSize, stitchLineSize } from '#core/block/size-quilt.ts';

const grid = fc.record({
  columns: fc.integer({ min: 1, max: 99 }),
  rows: fc.integer({ min: 1, max: 99 }),
});
const block = fc
  .record({ cut: fc.integer({ min: 50, max: 600 }), seam: fc.integer({ min: 3, max: 24 }) })
  .map((sides) => Object.freeze(sides));

describe('sewnSize', () => {
  test('sewnSize(6×8, cut 8 1/2 in, seam 1 in) is 41 by 54 in', () => {
    const sewn = sewnSize({ columns: 6, rows: 8 }, { cut: 215.9, seam: 25.4 });
    expect(sewn.width / 25.4).toBeCloseTo(41, 10);
    expect(sewn.height / 25.4).toBeCloseTo(54, 10);
  });

  test('sewnSize(1×1) is the block as cut', () => {
    fc.assert(
      fc.property(block, (one) => {
        expect(sewnSize({ columns: 1, rows: 1 }, one)).toEqual({ width: one.cut, height: one.cut });
      }),
    );
  });

  test('sewnSize equals all blocks as cut less what each join swallows: two allowances', () => {
    fc.assert(
      fc.property(grid, block, ({ columns, rows }, one) => {
        expect(sewnSize({ columns, rows }, one)).toEqual({
          width: columns * one.cut - (columns - 1) * 2 * one.seam,
          height: rows * one.cut - (rows - 1) * 2 * one.seam,
        });
      }),
    );
  });

  test('sewnSize grows with columns and rows by one face each, and shrinks with the seam', () => {
    fc.assert(
      fc.property(grid, block, ({ columns, rows }, one) => {
        const size = sewnSize({ columns, rows }, one);
        const wider = sewnSize({ columns: columns + 1, rows }, one);
        expect(wider.width - size.width).toBe(one.cut - 2 * one.seam);
        expect(wider.height).toBe(size.height);
        const tighter = sewnSize({ columns, rows }, { cut: one.cut, seam: one.seam + 1 });
        expect(tighter.width).toBeLessThanOrEqual(size.width);
      }),
    );
  });

  test('sewnSize of a grid turned a quarter is turned too', () => {
    fc.assert(
      fc.property(grid, block, ({ columns, rows }, one) => {
        const { width, height } = sewnSize({ columns, rows }, one);
        const turned = sewnSize({ columns: rows, rows: columns }, one);
        expect(turned).toEqual({ width: height, height: width });
      }),
    );
  });
});

describe('stitchLineSize', () => {
  test('stitchLineSize(2×3, cut 120, seam 10) is 200 by 300', () => {
    expect(stitchLineSize({ columns: 2, rows: 3 }, { cut: 120, seam: 10 })).toEqual({
      width: 200,
      height: 300,
    });
  });

  test('stitchLineSize lies one seam inside the sewn edge all round', () => {
    fc.assert(
      fc.property(grid, block, (cells, one) => {
        const line = stitchLineSize(cells, one);
        const sewn = sewnSize(cells, one);
        expect(sewn.width - line.width).toBe(2 * one.seam);
        expect(sewn.height - line.height).toBe(2 * one.seam);
      }),
    );
  });
});
