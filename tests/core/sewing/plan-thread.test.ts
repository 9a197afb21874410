import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureSeams } from '#core/sewing/measure-seams.ts';
import { crossingLength, planThread, type Stitching } from '#core/sewing/plan-thread.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const block = { cut: 120, seam: 10, snipDepth: 5, snipPitch: 6 };
const stitching: Stitching = deepFreeze({
  length: 2.5,
  tail: 75,
  link: 12.5,
  chained: true,
  borderPasses: 2,
  bobbin: 50_000,
});
const quilt = deepFreeze({ grid: { columns: 3, rows: 2 }, block, thickness: 1 });
const any = fc
  .record({
    columns: fc.integer({ min: 1, max: 40 }),
    rows: fc.integer({ min: 1, max: 40 }),
    thickness: fc.double({ min: 0.1, max: 10, noNaN: true }),
    cut: fc.integer({ min: 90, max: 400 }),
    seam: fc.integer({ min: 3, max: 40 }),
  })
  .map(({ columns, rows, thickness, ...sides }) =>
    deepFreeze({ grid: { columns, rows }, block: { ...block, ...sides }, thickness }),
  );

describe('planThread', () => {
  test('planThread(3×2) adds seams by what lies under the foot, links and tails twice', () => {
    // One sandwich of 1 mm at 2.5 mm: 2.8; two: 3.6; four: 5.2. One crossing pair: 2·2s = 40 mm.
    const seams = measureSeams(quilt.grid, block, 2);
    const inSeams = (seams.quilting + 2000) * 2.8 + (480 + 320 - 40) * 3.6 + 40 * 5.2;
    const plan = planThread(quilt, stitching);
    expect(plan.chained).toBeCloseTo(inSeams + 2 * (12 * 12.5 + 14 * 75), 6);
    expect(plan.singly).toBeCloseTo(inSeams + 2 * 38 * 75, 6);
    expect(plan.used).toBe(plan.chained);
    expect(planThread(quilt, { ...stitching, chained: false }).used).toBe(plan.singly);
    expect(plan.seamLength).toBeCloseTo(seams.quilting + 480 + 320 + 2000, 9);
    expect(plan.ratio).toBeCloseTo(inSeams / plan.seamLength, 12);
  });

  test('planThread with a measured ratio uses it for every seam', () => {
    const plan = planThread(quilt, { ...stitching, ratio: 3, tail: 0, link: 0 });
    expect(plan.ratio).toBeCloseTo(3, 12);
    expect(plan.used).toBeCloseTo(3 * plan.seamLength, 9);
  });

  test('planThread asks for the bobbins that half the thread fills, the last one begun', () => {
    const plan = planThread(quilt, { ...stitching, ratio: 2, tail: 0, link: 0 });
    const half = plan.used / 2;
    const bobbins = (bobbin: number) =>
      planThread(quilt, { ...stitching, ratio: 2, tail: 0, link: 0, bobbin }).bobbins;
    expect(bobbins(half)).toBe(1);
    expect(bobbins(half - 1)).toBe(2);
    expect(bobbins(half / 7)).toBe(7);
  });

  test('planThread spends in its chains, each by its own, what it uses in all', () => {
    fc.assert(
      fc.property(
        any,
        fc.boolean(),
        fc.integer({ min: 1, max: 6 }),
        (one, chained, borderPasses) => {
          const plan = planThread(one, { ...stitching, chained, borderPasses });
          const spent = plan.chains.reduce((sum, run) => sum + run.chains * run.thread, 0);
          const sewn = plan.chains.reduce((sum, run) => sum + run.inSeams, 0);
          expect(spent / plan.used).toBeCloseTo(1, 9);
          expect(sewn / (plan.ratio * plan.seamLength)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('planThread chained never uses more than singly while a link is at most two tails', () => {
    fc.assert(
      fc.property(
        any,
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, tail, part) => {
          const plan = planThread(one, { ...stitching, tail, link: 2 * tail * part });
          expect(plan.chained).toBeLessThanOrEqual(plan.singly * (1 + 1e-12));
        },
      ),
    );
  });

  test('planThread uses more for thicker cloth, shorter stitches and longer tails', () => {
    fc.assert(
      fc.property(any, (one) => {
        const { used } = planThread(one, stitching);
        const thicker = { ...one, thickness: one.thickness + 0.1 };
        expect(planThread(thicker, stitching).used).toBeGreaterThan(used);
        expect(planThread(one, { ...stitching, length: 2 }).used).toBeGreaterThan(used);
        expect(planThread(one, { ...stitching, tail: 76 }).used).toBeGreaterThan(used);
      }),
    );
  });

  test('planThread lies between the ratios of one sandwich and of four', () => {
    fc.assert(
      fc.property(any, (one) => {
        const { ratio } = planThread(one, stitching);
        expect(ratio).toBeGreaterThanOrEqual((2 + (2 * one.thickness) / 2.5) * (1 - 1e-12));
        expect(ratio).toBeLessThan(2 + (8 * one.thickness) / 2.5);
      }),
    );
  });
});

describe('crossingLength', () => {
  test('crossingLength(3×2, seam 10) is two crossings of 20 mm', () => {
    expect(crossingLength({ columns: 3, rows: 2 }, { seam: 10 })).toBe(40);
  });

  test('crossingLength of a single row or column is nothing', () => {
    expect(crossingLength({ columns: 9, rows: 1 }, { seam: 10 })).toBe(0);
    expect(crossingLength({ columns: 1, rows: 9 }, { seam: 10 })).toBe(0);
  });

  test('crossingLength never exceeds the row seams where a face is at least two allowances', () => {
    const wide = any.filter((one) => one.block.cut >= 4 * one.block.seam);
    fc.assert(
      fc.property(wide, (one) => {
        const { rows } = measureSeams(one.grid, one.block, 1);
        expect(crossingLength(one.grid, one.block)).toBeLessThanOrEqual(rows);
      }),
    );
  });
});
