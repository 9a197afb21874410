import type { PlanAnswer } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { checkRequest } from './check-request.ts';
import { readQuery } from './read-query.ts';

/**
 * What the core can do in the page without asking anybody. The entry of a bundle of its own, fetched only
 * when it may be needed, so that the element itself stays light.
 */
export interface OnDevice {
  /** The same plan as the service gives for the same query. */
  readonly computePlan: (query: string) => Outcome<PlanAnswer>;
}

/** Works a plan out on the device: the same core and so the same answer as the service. */
export function computePlan(query: string): Outcome<PlanAnswer> {
  const request = checkRequest(readQuery(query));
  if (!request.ok) return request;
  const resolved = resolvePlan(request.value);
  return resolved.ok ? { ok: true, value: planQuilt(resolved.value) } : resolved;
}
