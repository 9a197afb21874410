import type { Caution, Step } from '../contract.ts';
import { GRAMS, massUnit } from '../mass.ts';
import { orderWork } from '../sewing/order-work.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { Plan } from './reckon-plan.ts';

/**
 * The steps of a plan, each with those of its cautions that hold for this plan.
 *
 * @param cautions all that hold for the plan
 */
export function describeWork(
  plan: Plan,
  spec: PlanSpec,
  cautions: readonly Caution[],
): readonly Step[] {
  const told = new Set(cautions.map(({ code }) => code));
  const { width, height } = plan.stitchLine;
  const steps = orderWork({
    unit: spec.unit,
    ...plan.grid,
    ...plan.block,
    clearance: plan.clearance,
    fabrics: spec.layers.map((layer) => layer.fabric),
    prewashed: spec.layers.filter((layer) => layer.prewashed).map((layer) => layer.role),
    isMeasured: spec.shrink.isMeasured,
    pieces: plan.cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0),
    prints: plan.cloth.filter(({ role, pieces }) => role === 'top' && pieces > 0).length,
    topLeft: plan.cells[0]?.[0] ?? '',
    snips: plan.snips.beforeJoining,
    snipsJoined: plan.snips.afterJoining,
    minutesJoined: plan.snips.afterJoining * spec.pace.snip,
    needle: plan.needle,
    chained: spec.stitching.chained,
    bobbins: plan.bobbins,
    middle: plan.middle,
    borderPasses: spec.stitching.borderPasses,
    perimeter: 2 * (width + height),
    mismatch: plan.mismatch,
    ends: plan.ends,
    ease: spec.trueness.ease,
    wet: plan.weight.wet / GRAMS[massUnit(spec.unit)],
    time: plan.time,
  });
  return steps.map((step) => ({
    ...step,
    cautions: step.cautions.filter((code) => told.has(code)),
  }));
}
