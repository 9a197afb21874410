import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the plan says of what the quilt is made of and of what it takes, in one language; English sets what there is to say. */
export type MakingWords = typeof en;

/** What the plan says of what the quilt is made of and of what it takes, in every language. */
export const makingSource: TextSource<MakingWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
