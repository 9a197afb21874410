import { type PlanWords, planSource } from './plan/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';

/** All that the plan says, in one language. */
export type Text = SharedWords & PlanWords;

/**
 * The text of the plan, in English whatever language is asked for.
 *
 * @example
 * chooseText(['xx', 'en-GB']).language // => 'en'
 */
export function chooseText(_languages: readonly string[]): Text {
  return { ...sharedSource.en, ...planSource.en };
}
