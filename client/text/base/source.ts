import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What every element says but what is wrong with what was typed, in one language; English sets what there is to say. */
export type BaseWords = typeof en;

/** What every element says but what is wrong with what was typed, in every language. */
export const baseSource: TextSource<BaseWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
