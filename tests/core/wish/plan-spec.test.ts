import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { findFabric } from '#core/tables/fabrics.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

function specOf(request: PlanRequest) {
  const read = resolvePlan(request);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return specifyPlan(deepFreeze(read.value.input));
}

describe('specifyPlan', () => {
  test('specifyPlan turns inches into millimetres and percent into fractions', () => {
    const spec = specOf({ target: { width: 40, height: 50 }, block: { cut: 8.5 }, spare: 10 });
    expect(spec.wish).toEqual({ width: 1016, height: 1270, at: 'washed' });
    expect(spec).toMatchObject({
      cut: 215.9,
      spare: 0.1,
      squaring: 25.4,
      step: 114.3,
      usable: 63.5,
    });
    expect(spec.edges).toEqual({ seam: 25.4, snipDepth: 12.7, snipPitch: 6.35 });
    expect(spec).not.toHaveProperty('grid');
  });

  test('specifyPlan of a grid has no wish', () => {
    const spec = specOf({ target: { columns: 6, rows: 8 } });
    expect(spec.grid).toEqual({ columns: 6, rows: 8 });
    expect(spec).not.toHaveProperty('wish');
  });

  test('specifyPlan has a cloth for each print, named only where there are several', () => {
    const { cloths } = specOf({ target: { columns: 6, rows: 8 } });
    expect(cloths.map(({ layer, role, print }) => [layer, role, print])).toEqual([
      [0, 'top', 'A'],
      [0, 'top', 'B'],
      [0, 'top', 'C'],
      [0, 'top', 'D'],
      [1, 'backing', undefined],
    ]);
  });

  test('specifyPlan weighs prints by count, else by share', () => {
    const spec = specOf({
      target: { columns: 2, rows: 2 },
      layers: [
        {
          role: 'top',
          prints: [
            { id: 'a', count: 3 },
            { id: 'b', count: 1 },
          ],
        },
        { role: 'backing', prints: [{ id: 'c', share: 2.5 }, { id: 'd' }] },
      ],
    });
    expect(spec.cloths.map(({ weight }) => weight)).toEqual([3, 1, 2.5, 1]);
  });

  test('specifyPlan takes a prewash off the rolls of its layer', () => {
    const { cloths } = specOf({
      target: { columns: 2, rows: 2 },
      layers: [
        { role: 'top', prints: 1 },
        { role: 'backing', prewashed: true },
      ],
    });
    expect(cloths[0]?.roll.prewash).toEqual({ length: 0, width: 0 });
    const flannel = findFabric('flannel').length.usual / 100;
    expect(cloths[1]?.roll.prewash.length).toBeCloseTo(flannel, 12);
  });

  test('specifyPlan considers only cuts that will do', () => {
    const { cuts } = specOf({ target: { width: 40, height: 50 }, block: { seam: 3 } });
    expect(cuts[0]).toBeCloseTo(6.5 * 25.4, 9);
  });
});
