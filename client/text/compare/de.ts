import type { CompareWords } from './source.ts';

/** What the comparison says, in German. */
export const de: CompareWords = {
  title: 'Zwei Pläne',
  plans: { a: 'Der eine Plan', b: 'Der andere Plan' },
  hint: 'Füge die Adresse eines Plans ein.',
  none: 'Füge oben die Adressen zweier Pläne ein. Ein Plan, der da ist, lässt sich verdoppeln.',
  noPlan:
    'Das ist nicht die Adresse eines Plans. Öffne den Plan, kopiere die Adresse seiner Seite und füge sie hier ein.',
  double: 'Verdoppeln',
  doublings: { long: 'Doppelt so lang', both: 'In beide Richtungen doppelt' },
  swap: 'Plätze tauschen',
  open: 'Diesen Plan öffnen',
  table: 'Zahlen beider Pläne',
  figure: 'Zahl',
  difference: 'Der andere gegenüber dem einen',
  figures: {
    width: 'Breite, gewaschen',
    height: 'Länge, gewaschen',
    blocks: 'Blöcke',
    cut: 'Zuschnitt eines Blocks',
    top: 'Stoff für die Oberseite',
    middle: 'Stoff für die Zwischenlage',
    backing: 'Stoff für die Rückseite',
    cloth: 'Stoff insgesamt',
    cost: 'Preis des Stoffs',
    thread: 'Garn, höchstens etwa',
    snips: 'Einschnitte',
    minutes: 'Arbeit',
    weight: 'Gewicht, trocken',
  },
  more: (by) => `${by} mehr`,
  less: (by) => `${by} weniger`,
  same: 'gleich',
  drawing: (name, size) => `${name} im Maßstab, gewaschen ${size}.`,
  scale: 'Beide sind im selben Maßstab gezeichnet.',
  ready: (one, other) => `Verglichen: ${one} und ${other}.`,
};
