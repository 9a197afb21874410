import type { Length, Target, Unit } from '../contract.ts';
import { readLength } from '../read-length.ts';

const UNIT = String.raw`(?:(?:inch(?:es)?|centimet(?:er|re)s?|millimet(?:er|re)s?|met(?:er|re)s?|feet|foot|yards?|yds?|cms?|mm|ft|in|m)(?=x[\s-]*\d|[^a-z]|$)\.?|''|["”″'’′])`;
const NUMBER = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)*\s?[½¼¾⅛⅜⅝⅞⅓⅔]?|[½¼¾⅛⅜⅝⅞⅓⅔])`;
/** A number, perhaps with a unit, perhaps with a smaller one after it: `5'6"`, `5 feet 6 inches`. */
const LENGTH = String.raw`(${NUMBER})[\s-]*(${UNIT})?(?:\s*(${NUMBER})\s*(${UNIT}))?`;
const ACROSS = `(?:wide|width|across|w)(?![a-z])`;
const DOWN = `(?:long|length|tall|high|height|down|drop|l|h)(?![a-z])`;
const SAID = String.raw`(?:\s*\(?(${ACROSS}|${DOWN})\)?)?`;
const NEAR = String.raw`(?:(?:about|around|roughly|approx\.?|~)\s*)?`;
const SEPARATOR = String.raw`[\s-]*(by|x|×|\*|and|,)[\s-]*`;
const START = String.raw`(?<![\d.,/½¼¾⅛⅜⅝⅞⅓⅔])`;
const PAIR = new RegExp(`${START}${LENGTH}${SAID}${SEPARATOR}${NEAR}${LENGTH}${SAID}`, 'gi');
const SQUARE = new RegExp(`${START}${LENGTH}[\\s-]*square(?!s)(?!\\s*${UNIT})`, 'gi');
/** What makes a size the size of a block, or one number of a longer list. */
const NOT_A_QUILT =
  /^(?:[\d/]|[\s-]*(?:blocks?|squares?|patch|pieces?|pre-?cuts?)\b|\s*(?:by|x|×|\*)\s*\d)/i;

interface Side {
  /** As it would be written in a request, without a name of the unit where there is none. */
  readonly terms: readonly (readonly [number: string, unit: string | undefined])[];
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
 * readSides('2 by 3 m', 'in') // => { unit: 'cm', target: { width: '2 m', height: '3 m' } }
 * readSides('80" long by 60" wide', 'in') // => { unit: 'in', target: { width: 60, height: 80 } }
 */
export function readSides(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: Target } | undefined {
  // A metre and centimetres in one, as 1m20, and an "in" that is a word of its own.
  const text = words.replace(/(\d)\s*m\s?(\d{2})(?!\d|\s*mm)(?:\s*cm)?/gi, '$1 m $2 cm');
  const plain = unit === 'cm' ? text.replace(LOOSE_IN, '$1 · ') : text;
  const sides = findPair(plain) ?? findSquare(plain);
  if (sides === undefined) return undefined;
  const [one, other] = shareUnit(sides);
  const [across, down] =
    one.said === 'down' || other.said === 'across' ? [other, one] : [one, other];
  const named = nameUnit(down.terms[0]?.[1] ?? across.terms[0]?.[1]) ?? unit;
  const at = SEWN.test(words) ? { at: 'sewn' as const } : {};
  return {
    unit: named,
    target: { width: writeSide(across, named), height: writeSide(down, named), ...at },
  };
}

/** For somebody who measures in centimetres, "in" before a word is seldom a unit. */
const LOOSE_IN =
  /(\d) in (?=[a-z])(?!(?:by|x|and|or|wide|long|tall|high|square|quilt|throw|blanket|rag|lap)\b)/gi;
const SEWN = /\b(before (the |its )?(first )?wash(ing)?|unwashed|as sewn)\b/i;

function findPair(text: string): readonly [Side, Side] | undefined {
  for (const match of text.matchAll(PAIR)) {
    const [, a, aUnit, b, bUnit, aSaid, separator = '', c, cUnit, d, dUnit, cSaid] = match;
    const one = makeSide([a, aUnit, b, bUnit], aSaid);
    const other = makeSide([c, cUnit, d, dUnit], cSaid);
    // "between 40 and 50 inches" and "40, 50" are two lengths only where they are told apart.
    const isJoined = !/and|,/i.test(separator) || (aSaid !== undefined && cSaid !== undefined);
    if (isJoined && !isFollowed(text, match)) return [one, other];
  }
  return undefined;
}

function findSquare(text: string): readonly [Side, Side] | undefined {
  for (const match of text.matchAll(SQUARE)) {
    const [, a, aUnit, b, bUnit] = match;
    if (isFollowed(text, match)) continue;
    const side = makeSide([a, aUnit, b, bUnit], undefined);
    return [side, side];
  }
  return undefined;
}

function isFollowed(text: string, match: RegExpExecArray): boolean {
  return NOT_A_QUILT.test(text.slice(match.index + match[0].length));
}

function makeSide(
  [number = '', unit, more, moreUnit]: readonly (string | undefined)[],
  said: string | undefined,
): Side {
  const first = [number.trim(), tidyUnit(unit)] as const;
  const terms = more === undefined ? [first] : [first, [more.trim(), tidyUnit(moreUnit)] as const];
  if (said === undefined) return { terms, said };
  return { terms, said: /^[wa]/i.test(said) ? 'across' : 'down' };
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

/** A number where the unit is the request's own, else text with its unit. */
function writeSide({ terms }: Side, unit: Unit): Length {
  const [[number = '', name] = []] = terms;
  if (terms.length > 1 || (name !== undefined && name !== unit)) {
    return terms.map(([own, of]) => (of === undefined ? own : `${own} ${of}`)).join(' ');
  }
  const plain = Number(number.replace(',', '.'));
  return Number.isNaN(plain) || !readLength(number, unit).ok ? number : plain;
}

function tidyUnit(word: string | undefined): string | undefined {
  const lower = word?.toLowerCase();
  if (lower === undefined) return undefined;
  if (/^(in|["”″]|'')/.test(lower)) return 'in';
  if (/^(f|['’′])/.test(lower)) return 'ft';
  if (lower.startsWith('y')) return 'yd';
  if (lower.startsWith('c')) return 'cm';
  return /^m(m|il)/.test(lower) ? 'mm' : 'm';
}

function nameUnit(name: string | undefined): Unit | undefined {
  if (name === undefined) return undefined;
  return name === 'in' || name === 'ft' || name === 'yd' ? 'in' : 'cm';
}
