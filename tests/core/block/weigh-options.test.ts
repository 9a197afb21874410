import { describe, expect, test } from 'vitest';
import { byFit } from '#core/block/rank-options.ts';
import { sewnSize } from '#core/block/size-quilt.ts';
import { listCandidates, weighCandidate } from '#core/block/weigh-options.ts';
import type { PlanRequest } from '#core/contract.ts';
import { type PlanSpec, specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const NONE = { width: 0, height: 0 };
const WISH = deepFreeze({ width: 1270, height: 1524, at: 'washed' } as const);

function specify(request: Omit<PlanRequest, 'target'> = {}): PlanSpec {
  const resolved = resolvePlan({ ...request, target: { width: 50, height: 60 } });
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return deepFreeze(specifyPlan(resolved.value.input));
}

describe('weighCandidate', () => {
  const option = { cut: 254, grid: { columns: 6, rows: 7 }, shrink: { width: 0.03, height: 0.05 } };

  test('weighCandidate(6×7 of 10 in) measures the washed size against a washed wish', () => {
    const { washed, fit } = weighCandidate(specify(), WISH, option);
    const sewn = sewnSize(option.grid, { cut: 254, seam: 25.4 });
    expect(washed.width).toBeCloseTo(sewn.width * 0.97, 9);
    expect(washed.height).toBeCloseTo(sewn.height * 0.95, 9);
    expect(fit.width).toBeCloseTo(washed.width - 1270, 9);
    expect(fit.height).toBeCloseTo(washed.height - 1524, 9);
  });

  test('weighCandidate(6×7 of 10 in) measures the sewn size against a sewn wish', () => {
    const { fit } = weighCandidate(specify(), { ...WISH, at: 'sewn' }, option);
    const sewn = sewnSize(option.grid, { cut: 254, seam: 25.4 });
    expect(fit.width).toBeCloseTo(sewn.width - 1270, 9);
  });

  test('weighCandidate with a pace of nothing takes no minutes', () => {
    const none = {
      cutPiece: 0,
      stackBlock: 0,
      sewMetre: 0,
      handleSeam: 0,
      snip: 0,
      layBlock: 0,
      trimBlock: 0,
    };
    expect(weighCandidate(specify({ pace: none }), WISH, option).minutes).toBe(0);
    expect(weighCandidate(specify(), WISH, option).minutes).toBeGreaterThan(0);
  });

  test('weighCandidate of a row more costs no less cloth and more minutes', () => {
    const spec = specify();
    for (let rows = 1; rows < 20; rows += 1) {
      const less = weighCandidate(spec, WISH, { ...option, grid: { columns: 6, rows } });
      const more = weighCandidate(spec, WISH, { ...option, grid: { columns: 6, rows: rows + 1 } });
      expect(more.fabric).toBeGreaterThanOrEqual(less.fabric);
      expect(more.minutes).toBeGreaterThan(less.minutes);
    }
  });
});

describe('listCandidates', () => {
  test('listCandidates considers every cut size of the wish, best fit first', () => {
    const spec = specify();
    const all = listCandidates(spec, WISH, NONE);
    expect(new Set(all.map((one) => one.cut))).toEqual(new Set(spec.cuts));
    expect(all).toEqual(all.toSorted(byFit));
  });

  test('listCandidates adds the size asked for to the others, once', () => {
    const odd = listCandidates(specify({ block: { cut: 9.3 } }), WISH, NONE);
    expect(odd.some((one) => one.cut === 236.22)).toBe(true);
    const known = listCandidates(specify({ block: { cut: 9 } }), WISH, NONE);
    expect(known).toHaveLength(listCandidates(specify(), WISH, NONE).length);
  });

  test('listCandidates sews larger for a wash that shrinks, so that the washed size still fits', () => {
    const spec = specify();
    const shrink = { width: 0.08, height: 0.1 };
    const [best] = listCandidates(spec, WISH, shrink);
    const [unshrunk] = listCandidates(spec, WISH, NONE);
    if (best === undefined || unshrunk === undefined) throw new Error('No candidates');
    expect(Math.abs(best.washed.width - 1270)).toBeLessThan(60);
    expect(Math.abs(best.washed.height - 1524)).toBeLessThan(60);
    expect(best.grid.rows * best.cut).toBeGreaterThan(unshrunk.washed.height);
  });
});
