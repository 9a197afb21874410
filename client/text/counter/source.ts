import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the counter says, in one language; English sets what there is to say. */
export type CounterWords = typeof en;

/** What the counter says, in every language. */
export const counterSource: TextSource<CounterWords> = {
  en,
  load: {
    es: async () => en,
    de: async () => en,
    fr: async () => en,
  },
};
