import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What is wrong with what was typed, and what would make it right, in one language; English sets what there is to say. */
export type FaultsWords = typeof en;

/** What is wrong with what was typed, and what would make it right, in every language. */
export const faultsSource: TextSource<FaultsWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
