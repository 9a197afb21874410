import type { TextSource } from '../languages.ts';
import { en } from './en.ts';

/** What our pages say of themselves and the network, in one language. */
export type OfflineWords = typeof en;

/** What our pages say of themselves and the network, in every language. */
export const offlineSource: TextSource<OfflineWords> = {
  en,
  load: {
    es: async () => (await import('./es.ts')).es,
    de: async () => (await import('./de.ts')).de,
    fr: async () => (await import('./fr.ts')).fr,
  },
};
