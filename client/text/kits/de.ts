import type { KitLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import { sayFigure } from '../say-figure.ts';
import type { KitsWords } from './source.ts';

const limits: Readonly<Record<KitLimit, string>> = {
  top: 'mehr Musterstoff',
  middle: 'mehr Stoff für die Zwischenlage',
  backing: 'mehr Stoff für die Rückseite',
  mostOfOne: 'eine größere Auswahl an Mustern',
  distinctPrints: 'mehr verschiedene Muster',
};
const parts = { top: 'Musterstoff', middle: 'Zwischenlage', backing: 'Rückseite' } as const;
const many = makeCount('de');

/** Was die Seite über Nähpackungen außer dem sagt, was alle Elemente sagen, auf Deutsch. */
export const de: KitsWords = {
  language: 'de',
  faults: {
    'mixed-currencies': ({ received = 'Manches', expected = 'einer anderen Währung' }) =>
      `${received} steht neben ${expected}. Gib alles Geld in einer Währung an.`,
    'price-unclear': () =>
      'Nur eines davon kann gelten. Gib eine Spanne, einen Aufschlag oder einen Preis an.',
    'percents-do-not-sum': ({ received }) =>
      `Diese Prozente ergeben zusammen ${sayFigure('de', received) || 'nicht 100'}. Bring sie auf 100.`,
  },
  table: 'Ballen',
  costs: { in: 'Kosten je Yard', cm: 'Kosten je Meter' },
  kit: {
    title: 'Die Packung',
    size: 'Quilt',
    own: 'Eigene Größe',
    grid: 'So viele Blöcke',
    width: 'Breite, gewaschen',
    height: 'Länge, gewaschen',
    columns: 'Blöcke quer',
    rows: 'Blöcke längs',
    cut: 'Quadrate von',
    best: 'was am besten passt',
    wanted: 'Gewünschte Packungen',
    all: 'alle',
    distinctPrints: 'Muster, mindestens',
    mostOfOne: 'Von einem, höchstens',
    any: 'beliebig',
    spare: 'Quadrate in Reserve',
  },
  money: {
    title: 'Geld, für eine Packung',
    currency: 'Währung',
    packaging: 'Verpackung',
    labour: 'Arbeit',
    overhead: 'Gemeinkosten',
    asked: 'Ich setze',
    ways: {
      none: 'keinen Preis',
      margin: 'eine Spanne',
      markup: 'einen Aufschlag',
      price: 'den Preis',
    },
    margin: 'Spanne, % vom Preis',
    markup: 'Aufschlag, % auf die Kosten',
    price: 'Preis',
    unclear: (typed) => `„${typed}“ ist kein Betrag. Schreib 11,20 oder 11.20.`,
  },
  result: {
    title: 'Packungen',
    kits: 'Packungen',
    most: (most) => `von ${most}`,
    cost: 'Kosten',
    costs: (money) => `Kosten ${money}`,
    price: 'Preis',
    none: 'Noch keine Packung',
    empty:
      'Gib einen Ballen Musterstoff und einen für die Rückseite ein, dann zeigen sich hier die Packungen.',
    noneOf: 'Diese Ballen ergeben keine ganze Packung.',
    limited: (by) => {
      if (by.length === 0) return '';
      const wanted = new Intl.ListFormat('de').format(by.map((one) => limits[one]));
      return `Für eine Packung mehr braucht es ${wanted}.`;
    },
    group: (count) => many(count, 'Packung', 'Packungen'),
    squares: (count, name) => `${count} ${name}`,
    others: (count, role) => `In jeder ${many(count, 'Quadrat', 'Quadrate')} ${parts[role]}.`,
    drawing: (squares) => `Die Quadrate einer Packung, Muster für Muster: ${squares}.`,
    grid: (columns, rows, cut) =>
      `Jede ist ein Quilt von ${columns} mal ${rows} Blöcken, Zuschnitt ${cut}.`,
  },
  cutting: {
    title: 'Die Ballen zuschneiden',
    columns: ['Ballen', 'Streifen', 'Stück', 'Braucht', 'Rest'],
    how: (cut) =>
      `Streifen von ${cut} quer zum Ballen, dann Quadrate. Die Nummern zählen die Streifen; ein weißes Quadrat steckt in keiner Packung.`,
    over: (count) => `und ${count} Stück`,
    drawing: (name, strips, across) =>
      `${name}: ${many(strips, 'Streifen', 'Streifen')} zu ${many(across, 'Quadrat', 'Quadraten')}, im Maßstab.`,
    untouched: 'nicht angeschnitten',
  },
  buy: {
    title: (kits) => `Für ${many(kits, 'Packung', 'Packungen')} fehlt noch`,
    line: (amount, name, squares) =>
      `${amount} ${name}, für ${many(squares, 'Quadrat', 'Quadrate')}.`,
    cloths: { top: 'von einem weiteren Muster', middle: 'Zwischenlage', backing: 'Rückseite' },
  },
  sheet: {
    title: 'Eine Packung im Regal',
    rows: {
      materials: 'Stoff',
      labour: 'Arbeit',
      packaging: 'Verpackung',
      overhead: 'Gemeinkosten',
      cost: 'Kosten',
      price: 'Preis',
      marginPercent: 'Spanne',
    },
    noMoney: 'Gib zu jedem Ballen die Kosten an, dann zeigt sich hier das Geld.',
    weight: 'Gewicht',
    content: 'Fasern',
    care: 'Pflege',
  },
  cautions: 'Bevor du schneidest und verkaufst',
  assumptions: 'Was wir angenommen haben',
  stale: 'Zu sehen ist, was vorher war.',
  ready: (figures) => `Gerechnet: ${figures}.`,
};
