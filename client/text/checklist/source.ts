import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What the list of the work says, in one language; English sets what there is to say. */
export type ChecklistWords = typeof en;

/** What the list of the work says, in every language. */
export const checklistSource: TextSource<ChecklistWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
