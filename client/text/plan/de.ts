import { makeCount } from '../make-count.ts';
import type { PlanWords } from './source.ts';

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

/** Was der Plan außer dem sagt, was alle Elemente sagen, auf Deutsch. */
export const de: PlanWords = {
  language: 'de',
  machines: {
    household: 'eine Waschmaschine zu Hause schafft das',
    large: 'das braucht eine große Waschmaschine',
    laundry: 'das braucht die Maschinen eines Waschsalons',
  },
  section: (name) => sections[name] ?? name,
  kinds: { own: 'Eigene Größe', bed: 'Eigene Matratze', grid: 'So viele Blöcke' },
  states: { sewn: 'Genäht', washed: 'Gewaschen' },
  side: (name, state) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Breite',
    height: 'Länge',
    'bed.width': 'Matratze, Breite',
    'bed.length': 'Matratze, Länge',
    'bed.drop': 'Überhang seitlich',
    'bed.footDrop': 'Überhang am Fuß',
    columns: 'Blöcke quer',
    rows: 'Blöcke längs',
    cut: 'Oder ein eigenes Maß',
    seam: 'Nahtzugabe',
    snipDepth: 'Tiefe der Einschnitte',
    snipPitch: 'Abstand der Einschnitte',
  },
  wish: {
    title: 'Dein Wunsch',
    label: 'In deinen Worten',
    example: 'eine Decke, 100 x 130 cm',
    go: 'Planen',
    kind: 'Größe',
    region: 'Region',
    blocks: (columns, rows) => `${columns} × ${rows} Blöcke`,
    at: 'Diese Größe gilt',
    read: (what) => `Gelesen als ${what}. Blöcke und Stoff stellst du unten ein.`,
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
  plan: 'Dein Plan',
  drawing: (across, down, size) =>
    `Der Quilt im Maßstab: ${across} Blöcke quer, ${down} längs, ${size}.`,
  figures: { blocks: 'Blöcke', each: 'aus', cloth: 'Stoff', work: 'Arbeit' },
  fit: {
    width: ['breiter als gewünscht', 'schmaler als gewünscht', 'So breit wie gewünscht'],
    height: ['länger', 'kürzer', 'so lang wie gewünscht'],
  },
  between: (from, to) => `Je nach Stoff ${from} bis ${to}.`,
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
  others: 'Andere Pläne, die passen',
  moreOthers: 'Mehr',
  notes: {
    cautions: 'Bevor du anfängst',
    assumptions: 'Was wir angenommen haben',
    why: 'Wie jede Zahl zustande kommt',
  },
  stale: 'Zu sehen ist noch der Plan von vorher.',
  ready: (across, down, figures) => `Geplant: ${across} mal ${down} Blöcke, ${figures}.`,
};
