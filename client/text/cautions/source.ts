import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** How cautions are said in one language; English sets what there is to say. */
export type CautionsWords = typeof en;

/** How cautions are said, in every language. */
export const cautionsSource: TextSource<CautionsWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
