/*
 * Glossar: du, warm und knapp. block Block, layer Lage, top Oberseite, middle Zwischenlage, backing Rückseite,
 * seam Naht, seam allowance Nahtzugabe, stitching Nahtlinie, snip Einschnitt (einschneiden), fringe Fransen,
 * bolt Ballen, strip Streifen, selvage Webkante, print Muster, batting Vlies, thread Garn, bobbin Spule,
 * swatch Probe, test block Probeblock, shrink einlaufen, prewash vorwaschen, kit Nähpackung, stash Stoffvorrat,
 * cut size Zuschnitt, cot Babybett, throw Kuscheldecke.
 */
import type { FabricName, Role, SizeName } from '#core/contract.ts';
import { makeFaultWords } from '../fault-words.ts';
import type { SharedWords } from './source.ts';

const { where, given, found, bound, meant } = makeFaultWords('de', ['„', '“']);

const broken = () => 'Das konnte der Planer nicht lesen. Versuch es noch einmal.';

const faults: SharedWords['faults'] = {
  'malformed-json': broken,
  'malformed-query': broken,
  'wrong-content-type': broken,
  'body-too-large': broken,
  'too-deep': broken,
  'not-found': broken,
  'wrong-method': broken,
  internal: () => 'Beim Planer ist etwas schiefgegangen. Versuch es in einer Minute noch einmal.',
  'unknown-key': (fault) => `${where(fault)} gehört zu keinem Plan und wurde deshalb weggelassen.`,
  'repeated-key': (fault) => `${where(fault)} steht zweimal da. Gib es einmal an.`,
  missing: (fault) => `${where(fault)} fehlt. Gib es noch an.`,
  'wrong-type': (fault) => `${given(fault)} gehört nicht hierher. Versuch es mit einer Zahl.`,
  'not-one-of': (fault) => `${given(fault)} steht nicht zur Wahl. Nimm etwas aus der Liste.`,
  empty: () => 'Gib eine Zahl ein, etwa 21,5.',
  'too-short': (fault) =>
    `Das ist zu kurz. ${bound(fault, 'Nötig sind mindestens', 'Gib mehr an.')}`,
  'too-long': (fault) =>
    `Das ist zu lang. ${bound(fault, 'Bleib bei höchstens', 'Gib weniger an.')}`,
  'not-whole': () => 'Gib eine ganze Zahl an.',
  'too-small': (fault) => `Das ist zu klein. ${bound(fault, 'Nimm mindestens', 'Nimm mehr.')}`,
  'too-large': (fault) => `Das ist zu groß. ${bound(fault, 'Nimm höchstens', 'Nimm weniger.')}`,
  'bad-name': (fault) => `${given(fault)} geht hier nicht. Bleib bei Buchstaben und Ziffern.`,
  'not-a-length': (fault) => `${given(fault)} ist keine Länge. Schreib 21,5 oder 8 1/2 in.`,
  'unclear-comma': (fault) =>
    `${given(fault)} kann zweierlei heißen. Schreib ${meant(fault, ' oder ')}.`,
  'negative-length': () => 'Eine Länge ist nie negativ. Lass das Minus weg.',
  'zero-parts': (fault) =>
    `${given(fault)}: In 0 Teile lässt sich nichts teilen. Schreib 8½ oder 8 1/2.`,
  'two-lengths': (fault) =>
    `${given(fault)} liest sich wie zwei Längen. Gib eine an, etwa 21,5 oder 2 m 20 cm.`,
  'unknown-unit': (fault) =>
    `Die Einheit in ${given(fault)} ist nicht bekannt. Nimm cm, mm, m, in, ft oder yd.`,
  'target-unclear': () =>
    'Gib eine Größe an: Breite und Länge, einen Namen, eine Matratze oder Blöcke.',
  'size-not-in-region': (fault) =>
    `Die Größe ${given(fault)} gibt es dort nicht. Wähle eine andere Region oder Größe.`,
  'seam-eats-face': (fault) =>
    `Zwei Nahtzugaben von ${found(fault, 'dieser Breite')} lassen vom Block nichts übrig. Schneide größer zu. ${bound(fault, 'Oder bleib unter', 'Oder näh schmalere Nähte.')}`,
  'snips-reach-stitching': (fault) =>
    `Einschnitte von ${found(fault, 'dieser Tiefe')} treffen die Naht. ${bound(fault, 'Bleib unter', 'Schneide weniger tief ein.')}`,
  'roll-too-narrow': (fault) =>
    `Dieser Ballen ist zu schmal. ${bound(fault, 'Ein Block braucht', 'Es passt kein Block darauf.')} Schneide kleiner zu oder nimm breiteren Stoff.`,
  'layers-unfit': () =>
    'Gib eine Oberseite, eine Rückseite und höchstens zwei Lagen dazwischen an.',
  'repeated-id': (fault) => `Zwei Muster heißen ${given(fault)}. Benenne eines um.`,
  'counts-do-not-sum': () => 'Muster und Quilt haben nicht gleich viele Blöcke. Gleiche sie an.',
  'quilt-too-large': () =>
    'Das ist zu viel Quilt. Schneide größere Blöcke zu oder mach ihn kleiner.',
  'after-unlikely': () => 'So sehr kann sich die Probe nicht verändert haben. Miss noch einmal.',
  'wish-unclear': () => 'Darin steckt keine Größe. Schreib „100 x 130 cm“ oder „queen“.',
  'mixed-currencies': broken,
  'price-unclear': broken,
  'percents-do-not-sum': broken,
};

const fabrics: Readonly<Record<FabricName, string>> = {
  'quilting-cotton': 'Patchwork\u00adstoff',
  flannel: 'Flanell',
  denim: 'Jeansstoff',
  'linen-cotton': 'Leinen-Baumwolle',
  plush: 'Plüsch',
  fleece: 'Fleece',
  'cotton-batting': 'Baumwollvlies',
  'blend-batting': 'Mischvlies',
  'bamboo-batting': 'Bambusvlies',
  'polyester-batting': 'Polyestervlies',
};

const roles: Readonly<Record<Role, string>> = {
  top: 'Oberseite',
  middle: 'Zwischenlage',
  backing: 'Rückseite',
};

const sizes: Readonly<Record<SizeName, string>> = {
  cot: 'Babybett',
  lap: 'Kniedecke',
  throw: 'Kuscheldecke',
  twin: 'Twin (USA)',
  single: 'Einzelbett',
  full: 'Full (USA)',
  double: 'Doppelbett',
  queen: 'Queen',
  king: 'King',
  'california-king': 'California King',
  'super-king': 'Super King',
};

/** Was jedes Element sagt, auf Deutsch. */
export const de: SharedWords = {
  language: 'de',
  faults,
  fabric: (name) => fabrics[name],
  role: (name) => roles[name],
  size: (name) => sizes[name],
  severities: { danger: 'Gefahr', care: 'Vorsicht', note: 'Gut zu wissen' },
  fractions: 'Bruchteile',
  unitQuestion: 'Messen in',
  device:
    'Der Planer hat nicht geantwortet, darum hat dein Gerät gerechnet. Die Zahlen sind dieselben.',
  unreachable: 'Der Planer ist nicht zu erreichen.',
  retry: 'Noch einmal',
  host: 'Manches von dem, was verlangt war, ließ sich nicht lesen:',
  print: 'Drucken',
};
