import type { PlanWords } from './source.ts';

/** Was der Plan außer dem sagt, was alle Elemente sagen, auf Deutsch. */
export const de: PlanWords = {
  language: 'de',
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
    passed: (words) => `Nicht verstanden: ${words}.`,
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
  others: 'Andere Pläne, die passen',
  moreOthers: 'Mehr',
  stale: 'Zu sehen ist noch der Plan von vorher.',
  ready: (across, down, figures) => `Geplant: ${across} mal ${down} Blöcke, ${figures}.`,
};
