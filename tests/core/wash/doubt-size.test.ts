import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planQuilt } from '#core/plan.ts';
import { USUAL_SPREAD } from '#core/wash/count-swatches.ts';
import { doubtSize } from '#core/wash/doubt-size.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const shrink = { least: { width: 0.02, height: 0.02 }, most: { width: 0.08, height: 0.08 } };
const once = { confidence: 0.95, washes: 1 };

describe('doubtSize', () => {
  test('doubtSize is half the gap between least and most, in percent points', () => {
    const most = { width: 0.04, height: 0.07 };
    const { percent } = doubtSize({ least: { width: 0.02, height: 0.01 }, most }, [], once);
    expect(percent.width).toBeCloseTo(1, 12);
    expect(percent.height).toBeCloseTo(3, 12);
  });

  test('doubtSize counts the test blocks whose interval is half as wide, by the printed t of 95 %', () => {
    // Half of 3 points is 1.5; t(4)·0.5·√(1 + 1/5) = 1.52, t(5)·0.5·√(1 + 1/6) = 1.39.
    expect(doubtSize(shrink, [], once).blocks).toBe(6);
  });

  test('doubtSize goes by the pooled spread that was measured', () => {
    const groups = [{ n: 3, sd: USUAL_SPREAD / 2 }, { n: 1 }, { n: 4, sd: USUAL_SPREAD / 2 }];
    // t(2)·0.25·√(4/3) = 1.242 is within 1.5, t(1)·0.25·√1.5 = 3.89 is not.
    expect(doubtSize(shrink, groups, once).blocks).toBe(3);
  });

  test('doubtSize leaves the count out where the cloth itself varies more', () => {
    expect(doubtSize(shrink, [{ n: 5, sd: 2 }], once)).not.toHaveProperty('blocks');
  });
});

/** Specimens about a mean with exactly a given sample standard deviation. */
function spreadAbout(mean: number, sd: number, count: number): readonly number[] {
  const raw = Array.from({ length: count }, (_, index) => index - (count - 1) / 2);
  const unit = Math.sqrt(raw.reduce((sum, x) => sum + x * x, 0) / (count - 1));
  return raw.map((x) => mean + (x * sd) / unit);
}

describe('the promise of doubtSize', () => {
  test('so many test blocks of the usual spread do halve the doubt of a plan, whatever its layers', () => {
    const fabric = fc.constantFrom('quilting-cotton', 'flannel', 'denim', 'plush', 'linen-cotton');
    const grain = fc.constantFrom('alternating', 'aligned');
    fc.assert(
      fc.property(
        fabric,
        fabric,
        grain,
        fc.integer({ min: 1, max: 5 }),
        (top, back, way, washes) => {
          const request = {
            target: { columns: 5, rows: 6 },
            layers: [
              { role: 'top', fabric: top },
              { role: 'backing', fabric: back },
            ],
            grain: way,
            washes,
          } as const;
          const before = resolvePlan(request);
          if (!before.ok) throw new Error(JSON.stringify(before.faults));
          const plan = planQuilt(before.value);
          const told = plan.assumptions.find(({ path }) => path === 'swatches')?.why ?? '';
          const count = Number(/(\d+) quilted test blocks/.exec(told)?.[1] ?? 0);
          if (count === 0) return;
          const gap = (answer: typeof plan) => ({
            width: answer.size.washed.high.width - answer.size.washed.low.width,
            height: answer.size.washed.high.height - answer.size.washed.low.height,
          });
          const swatches = (['length', 'width'] as const).flatMap((direction) =>
            spreadAbout(96, USUAL_SPREAD, count).map((after) => ({
              fabric: 'sandwich',
              direction,
              before: 100,
              after,
            })),
          );
          const after = resolvePlan({ ...request, swatches });
          if (!after.ok) throw new Error(JSON.stringify(after.faults));
          const left = gap(planQuilt(after.value));
          expect(left.width).toBeLessThanOrEqual(gap(plan).width / 2 + 0.001);
          expect(left.height).toBeLessThanOrEqual(gap(plan).height / 2 + 0.001);
        },
      ),
    );
  });
});
