import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the stash says beside the words that all elements share, in one language; English sets what there is to say. */
export type StashWords = typeof en;

/** What the stash says beside the words that all elements share, in every language. */
export const stashSource: TextSource<StashWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
