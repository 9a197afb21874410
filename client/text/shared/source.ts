import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What every element says, in one language; English sets what there is to say. */
export type SharedWords = typeof en;

/** What every element says, in every language. */
export const sharedSource: TextSource<SharedWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
