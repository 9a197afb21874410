import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { makeStepManner } from '../../fields/step-manner.ts';
import type { StepWords } from '../../text/steps/en.ts';
import type { MakingContext } from './plan-context.ts';

/** A step in the reader's language: what is to be done, and more of it. */
export function sayStep(
  { text, said }: Pick<MakingContext, 'text' | 'said'>,
  step: ShownPlan['steps'][number],
): StepWords {
  return text.steps.say(step, makeStepManner(text, said));
}
