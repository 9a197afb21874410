import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { type ChecklistWords, checklistSource } from './checklist/source.ts';
import { type PlanWords, planSource } from './plan/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';
import { type StepsWords, stepsSource } from './steps/source.ts';

/** All that the plan says, in one language. */
export type Text = SharedWords &
  PlanWords & {
    readonly checklist: ChecklistWords;
    readonly steps: StepsWords;
    readonly cautions: CautionsWords;
  };

/**
 * The text of the plan, in English whatever language is asked for.
 *
 * @example
 * chooseText(['xx', 'en-GB']).language // => 'en'
 */
export function chooseText(_languages: readonly string[]): Text {
  return {
    ...sharedSource.en,
    ...planSource.en,
    checklist: checklistSource.en,
    steps: stepsSource.en,
    cautions: cautionsSource.en,
  };
}
