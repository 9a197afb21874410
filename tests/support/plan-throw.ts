import type { PlanAnswer, PlanRequest } from '#core/contract.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

/** The plan that the core makes of a request; of a throw where nothing else is asked. */
export function planThrow(request: Partial<PlanRequest> = {}): PlanAnswer {
  const resolved = resolvePlan({ target: { size: 'throw' }, ...request });
  if (!resolved.ok) throw new Error(`No plan: ${JSON.stringify(resolved.faults)}`);
  return planQuilt(resolved.value);
}
