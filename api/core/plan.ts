import { listCautions } from './cautions.ts';
import type { Assumption, Caution, PlanAnswer, PlanInput, Step } from './contract.ts';
import { ENGINE } from './engine.ts';
import { roundTo } from './length.ts';
import { writeLinks } from './links.ts';
import { GRAMS, massUnit } from './mass.ts';
import { buyOffers } from './plan/buy-offers.ts';
import { explainPlan } from './plan/explain-plan.ts';
import { doubtOf, gatherCautions } from './plan/gather-cautions.ts';
import { type Plan, reckonPlan } from './plan/reckon-plan.ts';
import { writePlan } from './plan/write-plan.ts';
import { orderWork } from './sewing/order-work.ts';
import { SOURCES } from './sources.ts';
import { blocksToHalve } from './wash/shrink-plan.ts';
import { type PlanSpec, specifyPlan } from './wish/plan-spec.ts';
import type { Resolved } from './wish/reading.ts';
import { writeLength } from './write-length.ts';

/**
 * One wish through everything: the place to start reading.
 *
 * The resolved input becomes millimetres (`specifyPlan`), block and grid are chosen and all that
 * follows from them is reckoned (`reckonPlan`), its cloth is bought of what is on offer (`buyOffers`),
 * the figures go back to the caller's unit (`writePlan`), and words are added: steps, cautions,
 * derivations. Equal input gives equal output.
 *
 * @param resolved what `resolvePlan` understood; it has passed every check, so nothing can fail here
 * @returns the body of the answer, links included
 */
export function planQuilt(resolved: Resolved<PlanInput>): PlanAnswer {
  const { input, assumptions, query } = resolved;
  const spec = specifyPlan(input);
  const reckoned = reckonPlan(spec);
  const plan = { ...reckoned, purchases: buyOffers(spec, reckoned) };
  const figures = writePlan(plan, input.unit, input.pace);
  const cautions = listCautions(gatherCautions(input, plan, spec));
  return {
    engine: ENGINE,
    ...figures,
    steps: describeWork(plan, spec, cautions),
    ...(input.explain && { why: explainPlan({ input, spec, plan, figures }) }),
    input,
    assumptions: [
      ...assumptions,
      ...describeChoice(input, figures.block.cut),
      ...describeDoubt(input, plan, spec),
    ],
    cautions,
    links: {
      ...writeLinks(query, { self: '/v1/plan', image: '/v1/plan.svg' }),
      page: `/?${query}`,
    },
  };
}

function describeChoice(input: PlanInput, cut: number): readonly Assumption[] {
  if (input.block.cut !== undefined) return [];
  const why =
    'Of the sizes that fit within 2 percent of the longer side of the best, the one with the fewest blocks';
  return [{ path: 'block.cut', value: cut, why, source: SOURCES.model }];
}

function describeDoubt(input: PlanInput, plan: Plan, spec: PlanSpec): readonly Assumption[] {
  if (spec.shrink.isMeasured) return [];
  const { width, height } = doubtOf(plan);
  const value = `${writeLength(width, spec.unit)} by ${writeLength(height, spec.unit)}`;
  const count = blocksToHalve(input, spec.shrink);
  const cure =
    count === undefined
      ? 'no number of test blocks up to thirty would halve it'
      : `${count} quilted test blocks, washed and measured both ways, would halve it`;
  const why = `Shrink of cloth that nobody measured leaves the washed size in doubt by this much; ${cure}`;
  return [{ path: 'swatches', value, why, source: SOURCES.model }];
}

/** The steps, each with those of its cautions that hold for this plan. */
function describeWork(plan: Plan, spec: PlanSpec, cautions: readonly Caution[]): readonly Step[] {
  const mass = massUnit(spec.unit);
  const wet = plan.weight.wet / GRAMS[mass];
  const told = new Set(cautions.map(({ code }) => code));
  const steps = orderWork({
    unit: spec.unit,
    ...plan.grid,
    ...plan.block,
    clearance: plan.clearance,
    fabrics: spec.layers.map((layer) => layer.fabric),
    prewashed: spec.layers.filter((layer) => layer.prewashed).map((layer) => layer.role),
    isMeasured: spec.shrink.isMeasured,
    pieces: plan.cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0),
    snips: plan.snips.beforeJoining,
    needle: plan.needle,
    chained: spec.stitching.chained,
    borderPasses: spec.stitching.borderPasses,
    within: 100 * plan.mismatch.withinFromCentre,
    ease: spec.trueness.ease,
    wet: `${roundTo(wet, wet < 1 ? 2 : 1)} ${mass}`,
  });
  return steps.map((step) => ({
    ...step,
    cautions: step.cautions.filter((code) => told.has(code)),
  }));
}
