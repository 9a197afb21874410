import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What tables of cloth say, in one language; English sets what there is to say. */
export type ClothWords = typeof en;

/** What tables of cloth say, in every language. */
export const clothSource: TextSource<ClothWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
