import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the comparison says beside the words that others share, in one language; English sets what there is to say. */
export type CompareWords = typeof en;

/** What the comparison says beside the words that others share, in every language. */
export const compareSource: TextSource<CompareWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
