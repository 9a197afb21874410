import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the small elements for the pages of others say alike, in one language; English sets what there is to say. */
export type LightWords = typeof en;

/** What the small elements for the pages of others say alike, in every language. */
export const lightSource: TextSource<LightWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
