import { makeCount } from '../make-count.ts';
import type { ClothWords } from './source.ts';

const count = makeCount('de');

/** Was Stofftabellen sagen, auf welcher Seite auch immer, auf Deutsch. */
export const de: ClothWords = {
  language: 'de',
  columns: {
    role: 'Für',
    id: 'Name',
    print: 'Muster',
    width: 'Breite',
    length: 'Länge',
    count: 'Stücke',
    cost: 'Kosten',
  },
  cell: (row, column) => `Zeile ${row}, ${column}`,
  remove: (name) => `${name} wegnehmen`,
  row: (row) => `Zeile ${row}`,
  prints: 'Mehrere Stücke zeigen ein Muster',
  printsHint: 'Gib Stücken mit einem Muster unter „Muster“ dasselbe Wort.',
  paste:
    'Füg an einer Zelle ein, was du in einer Tabelle kopiert hast. Eine Datei hat je eine Spalte für',
  roles: { top: 'Oben', middle: 'Mitte', backing: 'Unten' },
  noNames: 'Gib ihm einen eigenen Namen.',
  noRole: 'Wähle oben, Mitte oder unten.',
  open: 'CSV öffnen',
  save: 'CSV sichern',
  clear: 'Mit leerer Tabelle anfangen',
  clearInvented: 'fang mit einer leeren Tabelle an',
  undo: 'Zurückholen, was da war',
  opened: (rows) => `${count(rows, 'Zeile', 'Zeilen')} aus der Datei gelesen.`,
  pasted: (rows) => `${count(rows, 'Zeile', 'Zeilen')} eingefügt.`,
  cleared: 'Die Tabelle ist leer.',
  invented: 'Dieser Stoff ist aus einem Laden, den es nicht gibt. Überschreib ihn, oder',
  file: {
    'empty-file': () =>
      'In dieser Datei ist kein Stoff. Die erste Zeile benennt die Spalten, die anderen je einen Stoff.',
    'no-column': ({ column = '' }) =>
      `Zeile 1 nennt keine Spalte „${column}“. Schreib dieses Wort über die Spalte und öffne die Datei noch einmal.`,
    'stray-quote': ({ row = 0 }) =>
      `In Zeile ${row} steht ein Anführungszeichen falsch. Setz die Zelle in Anführungszeichen und schreib jedes darin doppelt.`,
    'too-many-rows': ({ row = 0, most = 0 }) =>
      `Die Tabelle fasst ${most} Zeilen, und Zeile ${row} ist eine zu viel. Nichts wurde übernommen; teil die Liste auf.`,
    unreadable: () =>
      'Diese Datei lässt sich nicht lesen. Sichere sie als CSV und öffne sie noch einmal.',
  },
  kept: 'Was du eingegeben hast, bleibt, wie es ist.',
  cuts: {
    across: (width) => `${width} quer`,
    wanted: (pieces) => `${pieces} gebraucht`,
    turned: 'gestrichelt: um ein Viertel gedreht',
    alike: (sheets) => `${sheets} gleiche`,
  },
};
