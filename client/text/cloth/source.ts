import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What tables of cloth say, in one language; English sets what there is to say. */
export type ClothWords = typeof en;

/** What tables of cloth say, in every language. */
export const clothSource: TextSource<ClothWords> = {
  en,
  load: {
    es: async () => en,
    de: async () => en,
    fr: async () => en,
  },
};
