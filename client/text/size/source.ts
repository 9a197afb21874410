import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the size says beside the words that all small elements share, in one language; English sets what there is to say. */
export type SizeWords = typeof en;

/** What the size says beside the words that all small elements share, in every language. */
export const sizeSource: TextSource<SizeWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
