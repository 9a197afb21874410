import type { Role, StashLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { StashWords } from './source.ts';

const count = makeCount('de');

const limits: Readonly<Record<Exclude<StashLimit, Role>, string>> = {
  touch: 'Mit mehr Blöcken träfe ein Muster auf sich selbst.',
  target: 'Er ist so groß, wie du wolltest.',
  shape: 'Es ist Stoff für mehr Blöcke da, aber nicht für eine ganze Reihe in dieser Form.',
  greatest: 'Größer lässt sich ein Quilt nicht planen.',
};

const missing: Readonly<Record<Role, string>> = {
  top: 'Musterstoff',
  middle: 'Stoff für die Zwischenlage',
  backing: 'Stoff für die Rückseite',
};

/** Was die Seite über den Stoffvorrat außer dem sagt, was alle Elemente sagen, auf Deutsch. */
export const de: StashWords = {
  language: 'de',
  table: 'Was du hast',
  wish: 'Was daraus werden darf',
  cut: 'Quadrate von',
  anyCut: 'beliebig',
  cutHint: 'Bleibt es leer, werden 6 bis 12 in oder 15 bis 30 cm versucht.',
  shape: 'Form',
  shapes: {
    throw: 'Kuscheldecke: vier breit, fünf hoch',
    square: 'Quadratisch',
    tall: 'Hoch: zwei breit, drei hoch',
    wide: 'Breit: fünf breit, vier hoch',
    own: 'Wie in der Adresse',
  },
  touch: 'Gleiche Muster dürfen',
  touches: {
    '': 'sich berühren',
    sides: 'keine Seite teilen',
    corners: 'sich gar nicht berühren',
  },
  seam: 'Nahtzugabe',
  more: 'Naht und Kanten',
  squaring: 'Zum Begradigen von jedem Stück ab',
  result: 'Was daraus wird',
  none: 'Noch kein Quilt',
  empty: 'Gib ein Stück Musterstoff ein, dann zeigt sich hier, was daraus wird.',
  small:
    'Aus diesen Stücken wird kein Quilt, der sich so legen lässt. Versuch kleinere Quadrate, lass gleiche Muster sich berühren oder nimm Stoff dazu.',
  figures: { washed: 'Gewaschen', blocks: 'Blöcke', each: 'aus' },
  limited: (by) => {
    const cloth = (['top', 'middle', 'backing'] as const).filter((role) => by.includes(role));
    const more = new Intl.ListFormat('de').format(cloth.map((role) => missing[role]));
    const others = by.flatMap((one) => (one in limits ? limits[one as keyof typeof limits] : []));
    return [...(more === '' ? [] : [`Mit mehr ${more} würde er größer.`]), ...others].join(' ');
  },
  drawing: (across, down, size) =>
    `Der Quilt im Maßstab: ${across} Blöcke quer, ${down} längs, ${size}.`,
  sewn: (size) => `Genäht misst er ${size}.`,
  touching: (sides, corners) => {
    if (sides + corners === 0) return 'Kein Muster trifft auf sich selbst.';
    if (sides > 0) {
      return `Muster teilen ${count(sides, 'Seite', 'Seiten')} mit sich selbst.`;
    }
    return `Kein Muster teilt eine Seite mit sich selbst; ${count(corners, 'Ecke berührt', 'Ecken berühren')} sich.`;
  },
  others: 'Andere Quilts daraus',
  cutting: 'Zuschneiden',
  cuttingHow: (cut) =>
    `Quadrate von ${cut}. Kleine Stücke kommen zuerst dran, damit große ganz bleiben.`,
  pieces: 'Stück',
  squares: 'Quadrate',
  left: 'Übrig',
  nothingLeft: 'Schnipsel',
  rectangle: (pieces, size) => {
    if (pieces === 1) return size;
    return `${pieces} zu ${size}`;
  },
  buy: (squares, role, cut) =>
    `Kauf ${missing[role]} für ${count(squares, 'Quadrat', 'Quadrate')} von je ${cut}.`,
  sheet: (name, size, squares) =>
    `${name}, ${size}: ${count(squares, 'Quadrat', 'Quadrate')}, Streifen für Streifen.`,
  sheetText: (size, squares) => `${size}, ${count(squares, 'Quadrat', 'Quadrate')}.`,
  along: 'Der Länge nach schneiden; hier liegt es auf der Seite.',
  plan: 'Diesen Quilt planen',
  cautions: 'Bevor du schneidest',
  assumptions: 'Was wir angenommen haben',
  stale: 'Zu sehen ist, was vorher war.',
  ready: (figures) => `Gerechnet: ${figures}.`,
};
