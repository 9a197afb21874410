import { listCautions } from './cautions.ts';
import type { Assumption, PlanAnswer, PlanInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { writeLinks } from './links.ts';
import { buyOffers } from './plan/buy-offers.ts';
import { describeWork } from './plan/describe-work.ts';
import { explainPlan } from './plan/explain-plan.ts';
import { explainSteps } from './plan/explain-steps.ts';
import { doubtOf, gatherCautions } from './plan/gather-cautions.ts';
import { type Plan, reckonPlan } from './plan/reckon-plan.ts';
import { supplyClass } from './plan/supply-class.ts';
import { writePlan } from './plan/write-plan.ts';
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
  const figures = {
    ...writePlan(plan, input.unit, input.pace),
    ...(input.pupils !== undefined && { class: supplyClass(plan, spec, input.pupils) }),
  };
  const cautions = listCautions(gatherCautions(input, plan, spec));
  const steps = describeWork(plan, spec, cautions);
  return {
    engine: ENGINE,
    ...figures,
    steps,
    ...(input.explain && {
      why: [...explainPlan({ input, spec, plan, figures }), ...explainSteps(steps, plan.time)],
    }),
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
