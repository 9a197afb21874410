import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the view of one step and the hand-out say, in one language; English sets what there is to say. */
export type WorkWords = typeof en;

/** What the view of one step and the hand-out say, in every language. */
export const workSource: TextSource<WorkWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
