import type { PlanRequest } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { checkRequest } from './check-request.ts';

/** What could be taken from the host, and what could not, each with its place. */
export interface HostInput {
  readonly request: PlanRequest;
  readonly faults: readonly Fault[];
}

/**
 * Reads what a host page hands over. Parts that have no meaning are left out one by one and told as
 * faults; all the rest is kept.
 *
 * @param given anything at all.
 * @param fallback what to plan where not even a target is left.
 */
export function readHostInput(given: unknown, fallback: PlanRequest): HostInput {
  const checked = checkRequest(given);
  if (checked.ok) return { request: checked.value, faults: [] };
  const faulty = new Set(checked.faults.map(({ path }) => path[0]));
  const isRecord = typeof given === 'object' && given !== null && !Array.isArray(given);
  const rest = Object.entries(isRecord ? given : {}).filter(([key]) => !faulty.has(key));
  const again = checkRequest({ target: fallback.target, ...Object.fromEntries(rest) });
  return { request: again.ok ? again.value : fallback, faults: checked.faults };
}
