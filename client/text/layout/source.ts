import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the layout says beside the words that all light elements share, in one language; English sets what there is to say. */
export type LayoutWords = typeof en;

/** What the layout says beside the words that all light elements share, in every language. */
export const layoutSource: TextSource<LayoutWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
