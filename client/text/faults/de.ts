import { makeFaultWords } from '../fault-words.ts';
import type { FaultsWords } from './source.ts';

const { where, given, found, bound, meant, isCount } = makeFaultWords('de', ['„', '“']);

const broken = () => 'Das konnte der Planer nicht lesen. Versuch es noch einmal.';

/** Ein Satz für jeden Fehler, auf Deutsch. */
export const de: FaultsWords = {
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
  empty: (fault) => `Gib eine Zahl ein, etwa ${isCount(fault) ? '6' : '21,5'}.`,
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
