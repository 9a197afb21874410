import * as v from 'valibot';
import type { Fault } from '#core/outcome.ts';
import type { OnDevice } from './on-device.ts';
import { planAnswerSchema, type ShownPlan } from './plan-answer-schema.ts';
import { readProblem } from './read-problem.ts';

/** Where plans come from. */
export interface PlanSource {
  /** Origin of the service, without a slash at its end; empty for the page's own. */
  readonly api: string;
  /** Fetches what can work a plan out on the device. */
  readonly loadCore: () => Promise<OnDevice>;
  /** Milliseconds after which the device is quicker. */
  readonly patience: number;
}

/** A plan and who worked it out; or what is wrong with the wish; or nobody to ask. */
export type LoadedPlan =
  | { readonly kind: 'plan'; readonly answer: ShownPlan; readonly from: 'service' | 'device' }
  | { readonly kind: 'faults'; readonly faults: readonly Fault[] }
  | { readonly kind: 'unreachable' };

/**
 * Asks the service for a plan; where that gives no answer in time, or none that can be read, the core
 * works it out in the page.
 *
 * @param query the plan asked for, without the question mark.
 * @param signal stops the asking when a newer wish came; the promise then rejects.
 */
export async function loadPlan(
  query: string,
  source: PlanSource,
  signal: AbortSignal,
): Promise<LoadedPlan> {
  const asked = await askService(query, source, signal).catch(() => undefined);
  signal.throwIfAborted();
  if (asked !== undefined) return asked;
  try {
    const { computePlan } = await source.loadCore();
    signal.throwIfAborted();
    const outcome = computePlan(query);
    return outcome.ok
      ? { kind: 'plan', answer: outcome.value, from: 'device' }
      : { kind: 'faults', faults: outcome.faults };
  } catch {
    signal.throwIfAborted();
    return { kind: 'unreachable' };
  }
}

async function askService(
  query: string,
  { api, patience }: PlanSource,
  signal: AbortSignal,
): Promise<LoadedPlan | undefined> {
  const response = await fetch(`${api}/v1/plan?${query}`, {
    signal: AbortSignal.any([signal, AbortSignal.timeout(patience)]),
  });
  const body: unknown = await response.json();
  if (response.ok) {
    return v.is(planAnswerSchema, body)
      ? { kind: 'plan', answer: body, from: 'service' }
      : undefined;
  }
  const faults = response.status < 500 ? readProblem(body) : undefined;
  return faults === undefined ? undefined : { kind: 'faults', faults };
}
