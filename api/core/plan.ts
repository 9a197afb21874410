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
import { findFabric } from './tables/fabrics.ts';
import { isMeasured } from './wash/shrink-quilt.ts';
import { type PlanSpec, specifyPlan } from './wish/plan-spec.ts';
import type { Resolved } from './wish/reading.ts';

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
    assumptions: [...assumptions, ...describeChoice(input, figures.block.cut)],
    cautions: describeCautions(plan, spec),
    links: writeLinks(query, { self: '/v1/plan', page: '/', image: '/v1/plan.svg' }),
  };
}

function describeChoice(input: PlanInput, cut: number): readonly Assumption[] {
  if (input.block.cut !== undefined) return [];
  const why =
    'Of the sizes that fit within 2 percent of the longer side of the best, the one with the fewest blocks';
  return [{ path: 'block.cut', value: cut, why, source: SOURCES.model }];
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

function describeCautions(plan: Plan, spec: PlanSpec): readonly Caution[] {
  const isKnown = spec.layers.every((layer) => isMeasured(layer, findFabric(layer.fabric)));
  const doubt = {
    width: plan.high.width - plan.low.width,
    height: plan.high.height - plan.low.height,
  };
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
    ...(!isKnown && { doubt }),
  });
}
