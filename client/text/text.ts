import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { type ChecklistWords, checklistSource } from './checklist/source.ts';
import { joinSources } from './join-sources.ts';
import type { TextSource } from './languages.ts';
import { type LightWords, lightSource } from './light/source.ts';
import { type PlanWords, planSource } from './plan/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';
import { type StepsWords, stepsSource } from './steps/source.ts';

interface Parts {
  readonly shared: SharedWords;
  readonly plan: PlanWords;
  readonly checklist: ChecklistWords;
  readonly steps: StepsWords;
  readonly cautions: CautionsWords;
  readonly light: LightWords;
}

/** All that the plan says, in one language. */
export type Text = SharedWords & PlanWords & Omit<Parts, 'shared' | 'plan'>;

const parts = joinSources<Parts>({
  shared: sharedSource,
  plan: planSource,
  checklist: checklistSource,
  steps: stepsSource,
  cautions: cautionsSource,
  light: lightSource,
});

const lay = ({ shared, plan, ...others }: Parts): Text => ({ ...shared, ...plan, ...others });

/**
 * All that the plan says, in every language: what all elements share and its own words side by side.
 *
 * @example
 * planText.en.language // => 'en'
 */
export const planText: TextSource<Text> = {
  en: lay(parts.en),
  load: {
    es: async () => lay(await parts.load.es()),
    de: async () => lay(await parts.load.de()),
    fr: async () => lay(await parts.load.fr()),
  },
};
