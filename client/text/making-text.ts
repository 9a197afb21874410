import { type ChecklistWords, checklistSource } from './checklist/source.ts';
import { joinSources } from './join-sources.ts';
import type { TextSource } from './languages.ts';
import { type MakingWords, makingSource } from './making/source.ts';
import { type StepsWords, stepsSource } from './steps/source.ts';

/** What the plan says below its first screen, in one language. */
export interface MakingText {
  readonly making: MakingWords;
  readonly checklist: ChecklistWords;
  readonly steps: StepsWords;
}

/** What the plan says below its first screen, in every language. */
export const makingText: TextSource<MakingText> = joinSources<MakingText>({
  making: makingSource,
  checklist: checklistSource,
  steps: stepsSource,
});
