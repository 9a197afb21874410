import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** How the steps of the work are said in one language; English sets what there is to say. */
export type StepsWords = typeof en;

/** How the steps of the work are said, in every language. */
export const stepsSource: TextSource<StepsWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
