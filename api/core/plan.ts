import { listCautions } from './cautions.ts';
import type { Assumption, Caution, PlanAnswer, PlanInput, Step } from './contract.ts';
import { ENGINE } from './engine.ts';
import { roundTo } from './length.ts';
import { writeLinks } from './links.ts';
import { GRAMS, massUnit } from './mass.ts';
import { explainPlan } from './plan/explain-plan.ts';
import { type Plan, reckonPlan } from './plan/reckon-plan.ts';
import { writePlan } from './plan/write-plan.ts';
import { orderWork } from './sewing/order-work.ts';
import { SOURCES } from './sources.ts';
import { swatchesToHalve } from './wash/shrink-plan.ts';
import { type PlanSpec, specifyPlan } from './wish/plan-spec.ts';
import type { Resolved } from './wish/reading.ts';
import { writeLength } from './write-length.ts';

/**
 * One wish through everything: the place to start reading.
 *
 * The resolved input becomes millimetres (`specifyPlan`), block and grid are chosen and all that
 * follows from them is reckoned (`reckonPlan`), the figures go back to the caller's unit
 * (`writePlan`), and words are added: steps, cautions, derivations. Equal input gives equal output.
 *
 * @param resolved what `resolvePlan` understood; it has passed every check, so nothing can fail here
 * @returns the body of the answer, links included
 */
export function planQuilt(resolved: Resolved<PlanInput>): PlanAnswer {
  const { input, assumptions, query } = resolved;
  const spec = specifyPlan(input);
  const plan = reckonPlan(spec);
  const figures = writePlan(plan, input.unit, input.pace);
  return {
    engine: ENGINE,
    ...figures,
    steps: describeWork(plan, spec),
    ...(input.explain && { why: explainPlan({ input, spec, plan, figures }) }),
    input,
    assumptions: [
      ...assumptions,
      ...describeChoice(input, figures.block.cut),
      ...describeDoubt(input, plan, spec),
    ],
    cautions: describeCautions(input, plan, spec),
    links: writeLinks(query, { self: '/v1/plan', page: '/', image: '/v1/plan.svg' }),
  };
}

function describeChoice(input: PlanInput, cut: number): readonly Assumption[] {
  if (input.block.cut !== undefined) return [];
  const why =
    'Of the sizes that fit within 2 percent of the longer side of the best, the one with the fewest blocks';
  return [{ path: 'block.cut', value: cut, why, source: SOURCES.model }];
}

/** How far least and most of the washed size lie apart, mm. */
function doubtOf(plan: Plan): { readonly width: number; readonly height: number } {
  return {
    width: plan.high.width - plan.low.width,
    height: plan.high.height - plan.low.height,
  };
}

function describeDoubt(input: PlanInput, plan: Plan, spec: PlanSpec): readonly Assumption[] {
  if (spec.shrink.isMeasured) return [];
  const { width, height } = doubtOf(plan);
  const value = `${writeLength(width, spec.unit)} by ${writeLength(height, spec.unit)}`;
  const count = swatchesToHalve(input, spec.shrink);
  const cure =
    count === undefined
      ? 'no number of swatches up to thirty would halve it'
      : `${count} swatches of each cloth, each way, would halve it`;
  const why = `Shrink of cloth that nobody measured leaves the washed size in doubt by this much; ${cure}`;
  return [{ path: 'swatches', value, why, source: SOURCES.model }];
}

function describeWork(plan: Plan, spec: PlanSpec): readonly Step[] {
  const mass = massUnit(spec.unit);
  return orderWork({
    unit: spec.unit,
    ...plan.grid,
    ...plan.block,
    clearance: plan.clearance,
    layers: plan.layers,
    pieces: plan.cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0),
    snips: plan.snips.beforeJoining,
    needle: plan.needle,
    chained: spec.stitching.chained,
    borderPasses: spec.stitching.borderPasses,
    prewashed: spec.layers.some((layer) => layer.prewashed),
    within: 100 * plan.mismatch.withinFromCentre,
    ease: spec.trueness.ease,
    wet: `${roundTo(plan.weight.wet / GRAMS[mass], 1)} ${mass}`,
  });
}

function describeCautions(input: PlanInput, plan: Plan, spec: PlanSpec): readonly Caution[] {
  const swatches = swatchesToHalve(input, spec.shrink);
  const doubt = { ...doubtOf(plan), ...(swatches !== undefined && { swatches }) };
  return listCautions({
    unit: spec.unit,
    size: plan.washed,
    wish: plan.wish,
    clearance: plan.clearance,
    crossingThickness: 4 * plan.thickness,
    snips: plan.snips.beforeJoining,
    needle: plan.needle,
    machine: plan.weight.machine,
    layers: spec.layers,
    ...(!spec.shrink.isMeasured && { doubt }),
  });
}
