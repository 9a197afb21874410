/**
 * Grids and options against plain looking: every grid up to 100 by 100, and every pair of options.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { proposeGrids } from '#core/block/propose-grids.ts';
import { type Candidate, keepUnbeaten } from '#core/block/rank-options.ts';
import { sewnSize } from '#core/block/size-quilt.ts';

const HUNDRED = Array.from({ length: 100 }, (_, index) => index + 1);

/** Counts next below and next above a wish; one only where it is met. */
function nearest(sizeOf: (count: number) => number, wish: number): readonly number[] {
  const below = HUNDRED.filter((count) => sizeOf(count) <= wish).slice(-1);
  const above = HUNDRED.filter((count) => sizeOf(count) >= wish).slice(0, 1);
  return [...new Set([...below, ...above])];
}

describe('proposeGrids', () => {
  test('proposeGrids gives the counts next below and above the wish, among all that there are', () => {
    const side = fc.integer({ min: 150, max: 4000 });
    const block = fc.record({
      cut: fc.integer({ min: 100, max: 400 }),
      seam: fc.integer({ min: 3, max: 20 }),
    });
    fc.assert(
      fc.property(side, side, block, (width, height, one) => {
        const across = nearest((columns) => sewnSize({ columns, rows: 1 }, one).width, width);
        const down = nearest((rows) => sewnSize({ columns: 1, rows }, one).height, height);
        const all = across.flatMap((columns) => down.map((rows) => ({ columns, rows })));
        const allowed = all.filter(({ columns, rows }) => columns * rows <= 2500);
        expect(proposeGrids({ width, height }, one)).toEqual(allowed);
      }),
    );
  });
});

type Costs = readonly [number, number, number];

describe('keepUnbeaten', () => {
  test('keepUnbeaten keeps the first of each Pareto-best triple, as looking at all pairs does', () => {
    const costs = fc.tuple(fc.nat({ max: 4 }), fc.nat({ max: 4 }), fc.nat({ max: 4 }));
    fc.assert(
      fc.property(fc.array(costs, { maxLength: 40 }), (all) => {
        const isLess = (one: Costs, other: Costs) =>
          one.every((cost, index) => cost <= (other[index] ?? 0)) &&
          one.some((cost, index) => cost < (other[index] ?? 0));
        const best = all.filter((one) => !all.some((other) => isLess(other, one)));
        const expected = [...new Set(best.map((one) => one.join()))];
        const kept = keepUnbeaten(all.map(candidate));
        const found = kept.map(({ fit, fabric, minutes }) => [fit.width, fabric, minutes].join());
        expect(found).toEqual(expected);
      }),
    );
  });
});

function candidate([fit, fabric, minutes]: Costs): Candidate {
  const washed = { width: 1000, height: 1000 };
  const grid = { columns: 1, rows: 1 };
  return { cut: 200, grid, washed, fit: { width: fit, height: 0 }, fabric, minutes };
}
