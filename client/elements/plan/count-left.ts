import type { ShownPlan } from '../../data/is-plan-answer.ts';

/**
 * Minutes of the steps that are not done yet.
 *
 * @example
 * countLeft([{ id: 'cut', minutes: 40 }, { id: 'snip', minutes: 90 }], ['cut']) // => 90
 */
export function countLeft(
  steps: readonly Pick<ShownPlan['steps'][number], 'id' | 'minutes'>[],
  done: readonly string[],
): number {
  return steps.reduce((sum, { id, minutes }) => sum + (done.includes(id) ? 0 : minutes), 0);
}
