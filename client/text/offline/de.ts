import type { OfflineWords } from './source.ts';

/** Was unsere Seiten von sich und vom Netz sagen, auf Deutsch. */
export const de: OfflineWords = {
  language: 'de',
  waiting: '',
  kept: 'Auf diesem Gerät aufgehoben: Sie öffnet sich auch ohne Netz.',
  refused: 'Dieser Browser hebt keine Seiten auf, ohne Netz öffnet sich diese also nicht.',
  silent: 'Kein Netz. Alles hier geht auch ohne weiter.',
  newer: 'Auf diesem Gerät aufgehoben. Eine neuere Fassung wartet auf deinen nächsten Besuch.',
};
