import { isPlanAnswer, type ShownPlan } from './is-plan-answer.ts';
import { type Loaded, loadAnswer, type Source } from './load-answer.ts';
import type { OnDevice } from './on-device.ts';

/** Where plans come from. */
export type PlanSource = Source<OnDevice>;

/** A plan and who worked it out; or what is wrong with the wish; or nobody to ask. */
export type LoadedPlan = Loaded<ShownPlan>;

/**
 * Asks for a plan.
 *
 * @param query the plan asked for, without the question mark.
 * @param signal stops the asking when a newer wish came; the promise then rejects.
 */
export function loadPlan(
  query: string,
  source: PlanSource,
  signal: AbortSignal,
): Promise<LoadedPlan> {
  return loadAnswer<ShownPlan, OnDevice>(
    {
      address: `/v1/plan?${query}`,
      isAnswer: isPlanAnswer,
      compute: ({ computePlan }) => computePlan(query),
    },
    source,
    signal,
  );
}
