import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestGrid } from '#core/wash/nearest-grid.ts';

const shrink = { width: 0.04, height: 0.05 };

describe('nearestGrid', () => {
  test('nearestGrid finds the grid whose own washed size is wanted', () => {
    const seam = 25.4;
    const face = 10 * 25.4;
    const wanted = {
      width: (4 * face + 2 * seam) * (1 - shrink.width),
      height: (5 * face + 2 * seam) * (1 - shrink.height),
    };
    const near = nearestGrid({ wanted, shrink, seam, cuts: [12 * 25.4] });
    expect(near?.grid).toEqual({ columns: 4, rows: 5 });
    expect(near?.fit.width).toBeCloseTo(0, 9);
    expect(near?.fit.height).toBeCloseTo(0, 9);
    expect(near?.sewn).toEqual({ width: 4 * face + 2 * seam, height: 5 * face + 2 * seam });
  });

  test('nearestGrid never misses by more than a block, and its washed size is wanted plus fit', () => {
    const side = fc.double({ min: 600, max: 2500, noNaN: true });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const cut = 228.6;
        const near = nearestGrid({ wanted: { width, height }, shrink, seam: 25.4, cuts: [cut] });
        expect(Math.abs(near?.fit.width ?? cut)).toBeLessThan(cut);
        expect(near?.washed.height).toBeCloseTo(height + (near?.fit.height ?? 0), 9);
      }),
    );
  });

  test('nearestGrid gives nothing where the seam eats every face or the quilt is beyond the limits', () => {
    const wanted = { width: 5000, height: 5000 };
    expect(nearestGrid({ wanted, shrink, seam: 30, cuts: [60] })).toBeUndefined();
    expect(nearestGrid({ wanted, shrink, seam: 20, cuts: [60] })).toBeUndefined();
  });
});
