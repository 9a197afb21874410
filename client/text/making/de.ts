import { makeCount } from '../make-count.ts';
import type { MakingWords } from './source.ts';

const count = makeCount('de');

const sections: Readonly<Record<string, string>> = {
  bulk: 'Dicke',
  class: 'Kurs',
  fabrics: 'Stoff',
  fringe: 'Fransen',
  grid: 'Blöcke',
  mismatch: 'Reihenenden',
  size: 'Größe',
  steps: 'Arbeitsschritte',
  thread: 'Garn',
  time: 'Zeit',
  weight: 'Gewicht',
  wish: 'Wunsch',
  work: 'Arbeit',
};

/** Was der Plan dazu sagt, woraus der Quilt wird und was er braucht, auf Deutsch. */
export const de: MakingWords = {
  language: 'de',
  machines: {
    household: 'eine Waschmaschine zu Hause schafft das',
    large: 'das braucht eine große Waschmaschine',
    laundry: 'das braucht die Maschinen eines Waschsalons',
  },
  section: (name) => sections[name] ?? name,
  edges: {
    cut: 'Oder ein eigenes Maß',
    seam: 'Nahtzugabe',
    snipDepth: 'Tiefe der Einschnitte',
    snipPitch: 'Abstand der Einschnitte',
  },
  blocks: {
    title: 'Blöcke',
    cut: 'Quadrate von',
    choose: 'Was am besten passt',
    more: 'Naht und Einschnitte',
    explain:
      'Die Nahtzugabe steht auf der Vorderseite hoch. Eingeschnitten und gewaschen wird sie zu Fransen.',
  },
  cloth: {
    title: 'Stoff',
    prints: 'Muster oben',
    fewer: 'Ein Muster weniger',
    more: 'Ein Muster mehr',
    none: 'Keine',
    bolts: 'Ballen und Vorwaschen',
    width: (role) => `${role}, Stoffbreite`,
    prewashed: (role) => `${role} wird vor dem Zuschneiden gewaschen`,
    turned: 'Jeden zweiten Block drehen, damit er in beide Richtungen gleich einläuft',
  },
  shopping: {
    title: 'Kaufen und zuschneiden',
    columns: ['Stoff', 'Kaufen', 'Streifen', 'Stück'],
    each: (squares) => `× ${squares}`,
    idle: (prints) => `Für ${count(prints, 'Muster', 'Muster')} bleibt kein Block. Nimm weniger.`,
    how: (cut) =>
      `Schneide quer zum Ballen ${cut} hohe Streifen und daraus die Quadrate. Reserve ist mitgezählt.`,
    thread: 'Garn',
    threadText: (amount, bobbins, saved) =>
      `Höchstens etwa ${amount}, die Hälfte davon auf ${count(bobbins, 'Spule', 'Spulen')}. In der Kette zu nähen spart ${saved}.`,
  },
  facts: {
    title: 'Was dich erwartet',
    work: 'Arbeit',
    workText: (hours, snips) =>
      `Etwa ${hours} am Tisch${snips && `, davon ${snips} zum Einschneiden`}.`,
    weight: 'Gewicht',
    weightText: (dry, wet, machine) => `${dry} trocken, ${wet} nass: ${machine}.`,
    rows: 'Reihenenden',
    rowsText: (ease, middle, end) =>
      `Von der Mitte aus genäht treffen sich ${middle} von 100 auf ${ease} genau, von einem Ende aus ${end}.`,
    shrink: 'Einlaufen',
    shrinkText: (across, down) => `${across} quer, ${down} längs.`,
  },
  notes: {
    cautions: 'Bevor du anfängst',
    assumptions: 'Was wir angenommen haben',
    why: 'Wie jede Zahl zustande kommt',
  },
  ways: {
    title: 'Mit diesem Plan weiter',
    counter: 'An den Zuschneidetisch',
    compare: 'Vergleichen',
    layout: 'Blöcke umlegen',
  },
};
