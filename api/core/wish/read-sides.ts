import type { Target, Unit } from '../contract.ts';
import {
  makeLength,
  NUMBER,
  nameUnit,
  type SaidLength,
  START,
  UNIT,
  writeSaid,
} from './said-length.ts';

/** A number, perhaps with a unit, perhaps with a smaller one after it: `5'6"`, `5 feet 6 inches`. */
const LENGTH = String.raw`(${NUMBER})[\s-]*(${UNIT})?(?:\s*(${NUMBER})\s*(${UNIT}))?`;
const ACROSS = `(?:wide|width|across|w)(?![a-z])`;
const DOWN = `(?:long|length|tall|high|height|down|drop|l|h)(?![a-z])`;
const SAID = String.raw`(?:\s*\(?(${ACROSS}|${DOWN})\)?)?`;
const NEAR = String.raw`(?:(?:about|around|roughly|approx\.?|~)\s*)?`;
const SEPARATOR = String.raw`[\s-]*(by|x|×|\*|and|,|mal|por|par|sur)[\s-]*`;
/** Before the first side: not the end of a range, and no grid, whose counts are read elsewhere. */
const ALONE = String.raw`(?<!\d[-–]|\bgrid(?:\s+of)?[\s:]*)`;
const PAIR = new RegExp(
  `${START}${ALONE}${LENGTH}${SAID}${SEPARATOR}${NEAR}${LENGTH}${SAID}`,
  'gi',
);
const SQUARE = new RegExp(`${START}${LENGTH}[\\s-]*square(?!s)(?!\\s*${UNIT})`, 'gi');
/** What makes a size the size of a block, or one number of a longer list. */
const NOT_A_QUILT =
  /^(?:[\d/]|[-–]\d|[\s-]*(?:blocks?|blöcke|bloques|blocs|squares?|patch|pieces?|pre-?cuts?|grid|layout)\b|\s*(?:by|x|×|\*|mal|por|par|sur)\s*\d)/i;

/** A quilt by its two sides. */
export type SidesTarget = Extract<Target, { width: unknown }>;

/** A side, and which of the two it was said to be. */
interface Side extends SaidLength {
  readonly said: 'across' | 'down' | undefined;
}

/**
 * Reads two lengths in a wish: "40 by 50 inches", "5' x 6'", "1,20 m x 1,50 m", "60 wide and 80 long",
 * "a 50 inch square". A unit said once is that of both. Lengths stay as they were written, so that
 * what is unclear in them is said where they are read.
 *
 * @param unit the unit of bare numbers where the words name none
 * @returns unit and target; nothing where the words hold no such pair
 *
 * @example
 * readSides('2 by 3 m', 'in') // => { unit: 'cm', target: { width: '2 m', height: '3 m' }, rest: ' · ' }
 * readSides('80" long by 60" wide', 'in') // => { unit: 'in', target: { width: 60, height: 80 }, rest: ' · ' }
 */
export function readSides(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: SidesTarget; readonly rest: string } | undefined {
  // A metre and centimetres in one, as 1m20, and an "in" that is a word of its own.
  const text = words.replace(/(\d)\s*m\s?(\d{2})(?!\d|\s*mm)(?:\s*cm)?/gi, '$1 m $2 cm');
  const plain = unit === 'cm' ? text.replace(LOOSE_IN, '$1 · ') : text;
  const found = findPair(plain) ?? findSquare(plain);
  if (found === undefined) return undefined;
  const [one, other] = shareUnit(found.sides);
  const [across, down] =
    one.said === 'down' || other.said === 'across' ? [other, one] : [one, other];
  const named = nameUnit(down.terms[0]?.[1] ?? across.terms[0]?.[1]) ?? unit;
  const at = SEWN.test(words) ? { at: 'sewn' as const } : {};
  return {
    unit: named,
    target: { width: writeSaid(across, named), height: writeSaid(down, named), ...at },
    rest: plain.replace(found.whole, ' · ').replace(SEWN, ' · '),
  };
}

/** For somebody who measures in centimetres, "in" before a word is seldom a unit. */
const LOOSE_IN =
  /(\d) in (?=[a-z])(?!(?:by|x|and|or|wide|long|tall|high|square|quilt|throw|blanket|rag|lap)\b)/gi;
const SEWN =
  /\b(?:before (?:the |its )?(?:first )?wash(?:ing)?|unwashed|(?:as|when|once|size) sewn|sewn size)\b|(?<!\b(?:hand|machine|home|well|self)[\s-])(?<!-)\bsewn\s*(?=[.,;)!]|$)/i;

/** Two sides, and the words that said them. */
interface Found {
  readonly sides: readonly [Side, Side];
  readonly whole: string;
}

function findPair(text: string): Found | undefined {
  for (const match of text.matchAll(PAIR)) {
    const [whole, a, aUnit, b, bUnit, aSaid, separator = '', c, cUnit, d, dUnit, cSaid] = match;
    const one = makeSide([a, aUnit, b, bUnit], aSaid);
    const other = makeSide([c, cUnit, d, dUnit], cSaid);
    // "between 40 and 50 inches" and "40, 50" are two lengths only where they are told apart.
    const isJoined = !/and|,/i.test(separator) || (aSaid !== undefined && cSaid !== undefined);
    if (isJoined && !isFollowed(text, match)) return { sides: [one, other], whole };
  }
  return undefined;
}

function findSquare(text: string): Found | undefined {
  for (const match of text.matchAll(SQUARE)) {
    const [whole, a, aUnit, b, bUnit] = match;
    if (isFollowed(text, match)) continue;
    const side = makeSide([a, aUnit, b, bUnit], undefined);
    return { sides: [side, side], whole };
  }
  return undefined;
}

function isFollowed(text: string, match: RegExpExecArray): boolean {
  return NOT_A_QUILT.test(text.slice(match.index + match[0].length));
}

function makeSide(terms: readonly (string | undefined)[], said: string | undefined): Side {
  const side = said === undefined ? undefined : /^[wa]/i.test(said) ? 'across' : 'down';
  return { ...makeLength(terms), said: side };
}

/** A unit said at one of two sides is that of both. */
function shareUnit([one, other]: readonly [Side, Side]): readonly [Side, Side] {
  const lend = (side: Side, from: Side): Side => {
    const [[number = '', unit] = []] = side.terms;
    if (unit !== undefined || side.terms.length > 1) return side;
    return { ...side, terms: [[number, from.terms[0]?.[1]]] };
  };
  return [lend(one, other), lend(other, one)];
}
