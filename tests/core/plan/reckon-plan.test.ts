import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byFit, isSame, keepUnbeaten, misfit, NEAR } from '#core/block/rank-options.ts';
import type { PlanRequest } from '#core/contract.ts';
import { reckonPlan } from '#core/plan/reckon-plan.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { understandPlan } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

const reckon = (request: PlanRequest) => reckonPlan(specifyPlan(understandPlan(request).input));
const target = { width: 40, height: 50 };

/** Runs a law over plans of any wish that has no fault. */
function holdForPlans(law: (plan: ReturnType<typeof reckonPlan>, request: PlanRequest) => void) {
  fc.assert(
    fc.property(planRequests, (request) => {
      fc.pre(resolvePlan(request).ok);
      law(reckon(request), request);
    }),
    { numRuns: 60 },
  );
}

describe('reckonPlan', () => {
  test('reckonPlan works a 6 by 8 quilt of 8 1/2 in blocks out as by hand', () => {
    const plan = reckon({ target: { columns: 6, rows: 8 }, block: { cut: 8.5 } });
    // Face 6.5 in: sewn 6·6.5 + 2 by 8·6.5 + 2.
    expect(plan.sewn.width / 25.4).toBeCloseTo(41, 10);
    expect(plan.sewn.height / 25.4).toBeCloseTo(54, 10);
    expect(plan.stitchLine.width / 25.4).toBeCloseTo(39, 10);
    expect(plan.snips).toMatchObject({ perSide: 33, beforeJoining: 4 * 48 * 33 });
    expect(plan.blocks).toBe(48);
    expect(plan.fit).toEqual({ width: 0, height: 0 });
  });

  test('reckonPlan washes within its low and high', () => {
    holdForPlans(({ low, washed, high }) => {
      for (const side of ['width', 'height'] as const) {
        expect(low[side]).toBeLessThanOrEqual(washed[side] + 1e-9);
        expect(washed[side]).toBeLessThanOrEqual(high[side] + 1e-9);
        expect(low[side]).toBeGreaterThan(0);
      }
    });
  });

  test('reckonPlan lists options best fit first, the chosen one among them, none beaten unasked', () => {
    holdForPlans(({ options, chosen }) => {
      expect(options.filter((option) => isSame(option, chosen))).toHaveLength(1);
      for (const [index, option] of options.entries()) {
        const next = options[index + 1];
        if (next !== undefined) expect(misfit(option)).toBeLessThan(misfit(next) + 0.011);
      }
      const free = keepUnbeaten(options);
      const beaten = options.filter((option) => !free.includes(option));
      for (const option of beaten) expect(isSame(option, chosen)).toBe(true);
      expect([...options].sort(byFit)).toEqual([...options]);
    });
  });

  test('reckonPlan chooses no more blocks than any option that fits nearly as well', () => {
    holdForPlans(({ options, chosen, grid }, { target: wish, block }) => {
      if ('columns' in wish || block?.cut !== undefined) return;
      const [best] = options;
      if (best === undefined) throw new Error('no option');
      const band = NEAR * Math.max(best.washed.width, best.washed.height);
      expect(misfit(chosen)).toBeLessThanOrEqual(misfit(best) + band + 1e-9);
      for (const option of options) {
        if (misfit(option) > misfit(best) + band) continue;
        expect(grid.columns * grid.rows).toBeLessThanOrEqual(
          option.grid.columns * option.grid.rows,
        );
      }
    });
  });

  test('reckonPlan keeps to a cut that was asked for, even a beaten one, beside its neighbours', () => {
    const plan = reckon({ target, block: { cut: 11 } });
    expect(plan.chosen.cut / 25.4).toBeCloseTo(11, 10);
    expect(plan.options.some((option) => isSame(option, plan.chosen))).toBe(true);
    expect(plan.options.length).toBeGreaterThan(1);
  });

  test('reckonPlan keeps to a grid that was asked for, even a beaten one', () => {
    holdForPlans(({ chosen, grid, options }, { target: wish }) => {
      if (!('columns' in wish)) return;
      expect(grid).toEqual({ columns: wish.columns, rows: wish.rows });
      expect(options.some((option) => isSame(option, chosen))).toBe(true);
    });
  });

  test('reckonPlan of more shrink never washes one grid larger', () => {
    const rates = fc.integer({ min: 0, max: 80 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(rates, rates, (one, more) => {
        const washed = (rate: number) =>
          reckon({
            target: { columns: 6, rows: 8 },
            layers: [
              { role: 'top', shrink: { length: 2.1, width: 1.1 } },
              { role: 'backing', shrink: { length: rate, width: rate } },
            ],
          }).washed;
        const [less, most] = [washed(one), washed(one + more)];
        expect(most.width).toBeLessThanOrEqual(less.width + 1e-9);
        expect(most.height).toBeLessThanOrEqual(less.height + 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  test('reckonPlan of layers in another order is the same quilt', () => {
    const layers = [{ role: 'top' }, { role: 'middle' }, { role: 'backing' }] as const;
    const one = reckon({ target, layers });
    const other = reckon({ target, layers: [layers[2], layers[0], layers[1]] });
    expect(other.grid).toEqual(one.grid);
    expect(other.washed.width).toBeCloseTo(one.washed.width, 9);
    expect(other.time).toEqual(one.time);
    expect(other.weight).toEqual(one.weight);
  });

  test('reckonPlan shares the blocks of each layer among its prints, to the last', () => {
    holdForPlans(({ cloth, blocks }) => {
      for (const role of ['top', 'backing']) {
        const rows = cloth.filter((need) => need.role === role);
        expect(rows.reduce((sum, need) => sum + need.pieces, 0)).toBe(blocks);
      }
    });
  });
});
