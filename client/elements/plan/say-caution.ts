import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { makeStepManner } from '../../fields/step-manner.ts';
import type { PlanContext } from './plan-context.ts';

/** A caution in the reader's language, with the figures of the plan that it names. */
export function sayCaution(
  { text, said, cautions }: Pick<PlanContext, 'text' | 'said' | 'cautions'>,
  { block, bulk, fringe, weight }: ShownPlan,
  caution: ShownPlan['cautions'][number],
): string {
  if (cautions === undefined) return caution.text;
  const { gap } = makeStepManner(text, said);
  return cautions.say(caution, {
    snips: fringe.snips,
    clearance: gap(block.clearance),
    thickness: `${Math.round(bulk.crossingThickness)} mm`,
    needle: bulk.needle,
    machine: weight.washer.machine,
  });
}
