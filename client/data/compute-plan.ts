import type { PlanAnswer, PlanRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

/**
 * Works a plan out on the device: the same core and so the same answer as the service.
 * A bundle of its own, fetched only when it may be needed.
 */
export function computePlan(request: PlanRequest): Outcome<PlanAnswer> {
  const resolved = resolvePlan(request);
  return resolved.ok ? { ok: true, value: planQuilt(resolved.value) } : resolved;
}
