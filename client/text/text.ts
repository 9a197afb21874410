import { type BaseWords, baseSource } from './base/source.ts';
import { joinSources } from './join-sources.ts';
import type { TextSource } from './languages.ts';
import { type LightWords, lightSource } from './light/source.ts';
import { type PlanWords, planSource } from './plan/source.ts';

interface Parts {
  readonly base: BaseWords;
  readonly plan: PlanWords;
  readonly light: LightWords;
}

/** All that the plan says on its first screen, in one language. */
export type Text = BaseWords & PlanWords & Pick<Parts, 'light'>;

const parts = joinSources<Parts>({ base: baseSource, plan: planSource, light: lightSource });

const lay = ({ base, plan, light }: Parts): Text => ({ ...base, ...plan, light });

/**
 * All that the plan says on its first screen, in every language: what all elements share and its own words side by side.
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
