import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the size says beside the words that all small elements share, in one language; English sets what there is to say. */
export type SizeWords = typeof en;

/** What the size says beside the words that all small elements share, in every language. */
export const sizeSource: TextSource<SizeWords> = {
  en,
  load: {
    es: async () => en,
    de: async () => en,
    fr: async () => en,
  },
};
