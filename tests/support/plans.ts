import type { PlanAnswer, PlanRequest } from '#core/contract.ts';
import { buyOffers } from '#core/plan/buy-offers.ts';
import type { Explained } from '#core/plan/explained.ts';
import { reckonPlan } from '#core/plan/reckon-plan.ts';
import { writePlan } from '#core/plan/write-plan.ts';
import { planQuilt } from '#core/plan.ts';
import { specifyPlan } from '#core/wish/plan-spec.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { deepFreeze } from './deep-freeze.ts';

/** What was understood of a request that has no fault. */
export function understandPlan(request: PlanRequest) {
  const read = resolvePlan(deepFreeze(request));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return deepFreeze(read.value);
}

/** The plan for a request that has no fault. */
export function planFor(request: PlanRequest): PlanAnswer {
  return planQuilt(understandPlan(request));
}

/** All that a derivation may draw on. */
export function explainedFor(request: PlanRequest): Explained {
  const { input } = understandPlan(request);
  const spec = deepFreeze(specifyPlan(input));
  const reckoned = reckonPlan(spec);
  const plan = deepFreeze({ ...reckoned, purchases: buyOffers(spec, reckoned) });
  return { input, spec, plan, figures: writePlan(plan, input.unit, input.pace) };
}
