import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the counter says, in one language; English sets what there is to say. */
export type CounterWords = typeof en;

/** What the counter says, in every language. */
export const counterSource: TextSource<CounterWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
