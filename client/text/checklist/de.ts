import type { ChecklistWords } from './source.ts';

/** Was die Liste der Arbeit sagt, auf Deutsch. */
export const de: ChecklistWords = {
  title: 'Die Arbeit',
  done: (done, all) => `${done} von ${all} erledigt`,
  left: (time) => `noch etwa ${time}`,
  row: (name) => `Reihe ${name}`,
  focus: 'Schritt für Schritt',
  handOut: 'Blatt für einen Kurs',
  missing: 'Dieser Teil ließ sich nicht holen. Versuch es noch einmal, wenn du verbunden bist.',
};
