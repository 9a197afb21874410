import { describe, expect, test } from 'vitest';
import type { PlanInput, PlanRequest } from '#core/contract.ts';
import { planQuilt } from '#core/plan.ts';
import { prewashRates } from '#core/wash/prewash-rates.ts';
import { blocksToHalve, coursesOf, measuredLayers, shrinkPlan } from '#core/wash/shrink-plan.ts';
import type { Resolved } from '#core/wish/reading.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

function resolve(rest: Partial<PlanRequest> = {}): Resolved<PlanInput> {
  const read = resolvePlan({ target: { width: 50, height: 60 }, ...rest });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}
const swatch = (fabric: string, direction: 'length' | 'width', after: number) =>
  ({ fabric, direction, before: 10, after }) as const;
const both = (fabric: string, ...afters: readonly number[]) =>
  afters.flatMap((after) => [swatch(fabric, 'length', after), swatch(fabric, 'width', after)]);

describe('shrinkPlan', () => {
  test('shrinkPlan by a washed test block is what the block did, and is measured', () => {
    const { input } = resolve({ swatches: both('sandwich', 9.5, 9.6, 9.7) });
    const { usual, isMeasured } = shrinkPlan(input);
    expect(usual.width).toBeCloseTo(0.04, 9);
    expect(usual.height).toBeCloseTo(0.04, 9);
    expect(isMeasured).toBe(true);
  });

  test('shrinkPlan by swatches of one layer alone still leans on the table for the other', () => {
    const { input } = resolve({ swatches: both('flannel', 9.4, 9.4) });
    const unmeasured = shrinkPlan(resolve().input);
    expect(shrinkPlan(input).isMeasured).toBe(false);
    expect(shrinkPlan(input).usual.width).toBeGreaterThan(unmeasured.usual.width);
  });
});

describe('coursesOf and measuredLayers', () => {
  test('measuredLayers give each fabric the courses of its own swatches', () => {
    const { input } = resolve({ swatches: both('flannel', 9.5) });
    const [top, backing] = measuredLayers(input);
    expect(top?.courses).toEqual({});
    expect(backing?.courses?.length?.usual).toEqual(coursesOf(input)[0]?.range.usual);
  });

  test('a prewash takes from the roll what its swatches say', () => {
    const { input } = resolve({
      layers: [{ role: 'top' }, { role: 'backing', prewashed: true }],
      swatches: both('flannel', 9.2),
    });
    const [, backing] = measuredLayers(input);
    expect(backing && prewashRates(backing).length).toBeCloseTo(0.08, 9);
  });
});

describe('blocksToHalve', () => {
  test('blocksToHalve is told with the doubt of this very quilt, in caution and assumption', () => {
    const resolved = resolve();
    const { cautions, assumptions, size } = planQuilt(resolved);
    const count = blocksToHalve(resolved.input, shrinkPlan(resolved.input));
    const told = cautions.find(({ code }) => code === 'unmeasured-shrink');
    const assumed = assumptions.find(({ path }) => path === 'swatches');
    const eighths = Math.round((size.washed.high.width - size.washed.low.width) * 8);
    expect(told?.text).toContain(`${count} quilted test blocks`);
    expect(assumed?.why).toContain(`${count} quilted test blocks`);
    expect(String(assumed?.value)).toContain(`${Math.floor(eighths / 8)} `);
  });

  test('a plan whose cloth was all measured neither doubts nor warns', () => {
    const swatches = both('sandwich', 9.55, 9.6, 9.65);
    const { cautions, assumptions, size } = planQuilt(resolve({ swatches }));
    expect(cautions.map(({ code }) => code)).not.toContain('unmeasured-shrink');
    expect(assumptions.map(({ path }) => path)).not.toContain('swatches');
    expect(size.washed.high.width - size.washed.low.width).toBeGreaterThan(0);
  });

  test('more swatches of the same spread narrow the washed size', () => {
    const wide = planQuilt(resolve({ swatches: both('sandwich', 9.55, 9.65) })).size.washed;
    const many = both('sandwich', 9.55, 9.65, 9.55, 9.65, 9.55, 9.65);
    const narrow = planQuilt(resolve({ swatches: many })).size.washed;
    const gap = (size: typeof wide) => size.high.width - size.low.width;
    expect(gap(narrow)).toBeLessThan(gap(wide) / 2);
  });
});
