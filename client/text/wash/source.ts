import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the wash says beside the words that all elements share, in one language; English sets what there is to say. */
export type WashWords = typeof en;

/** What the wash says beside the words that all elements share, in every language. */
export const washSource: TextSource<WashWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
