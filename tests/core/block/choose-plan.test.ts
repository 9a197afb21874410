import { describe, expect, test } from 'vitest';
import { choosePlan } from '#core/block/choose-plan.ts';
import { byFit, isSame } from '#core/block/rank-options.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { understandPlan } from '../../support/plans.ts';

const chosenFor = (request: Parameters<typeof understandPlan>[0]) =>
  choosePlan(specifyPlan(understandPlan(request).input));

describe('choosePlan', () => {
  test('choosePlan(40 by 50 in) is 4 by 5 blocks of 12 in, the handiest near fit', () => {
    const { chosen, wish } = chosenFor({ target: { width: 40, height: 50 } });
    expect(chosen).toMatchObject({ cut: 304.8, grid: { columns: 4, rows: 5 } });
    expect(wish).toEqual({ width: 1016, height: 1270, at: 'washed' });
  });

  test('choosePlan(a grid) is that grid, weighed against its own washed size', () => {
    const target = { columns: 6, rows: 8 };
    const { chosen, wish, candidates } = chosenFor({ target, block: { cut: 8.5 } });
    expect(chosen).toMatchObject({ cut: 215.9, grid: target, fit: { width: 0, height: 0 } });
    expect(wish).toEqual({ ...chosen.washed, at: 'washed' });
    expect(candidates.filter((one) => isSame(one, chosen))).toHaveLength(1);
  });

  test('choosePlan keeps to the cut size asked for and lists the others, best fit first', () => {
    const { chosen, candidates } = chosenFor({ target: { size: 'throw' }, block: { cut: 7 } });
    expect(chosen.cut).toBe(177.8);
    expect(new Set(candidates.map(({ cut }) => cut)).size).toBeGreaterThan(1);
    expect(candidates.toSorted(byFit)).toEqual(candidates);
  });
});
