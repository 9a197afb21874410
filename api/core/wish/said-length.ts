import type { Length, Unit } from '../contract.ts';
import { readLength } from '../read-length.ts';

/** A unit as people write it, not where a longer word starts the same. */
export const UNIT = String.raw`(?:(?:inch(?:es)?|centimet(?:er|re)s?|millimet(?:er|re)s?|met(?:er|re)s?|feet|foot|yards?|yds?|cms?|mm|ft|in|m)(?=x[\s-]*\d|[^a-z]|$)\.?|''|["”″'’′])`;
export const NUMBER = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)*\s?[½¼¾⅛⅜⅝⅞⅓⅔]?|[½¼¾⅛⅜⅝⅞⅓⅔])`;
/** Before a number: nothing that would be a part of it. */
export const START = String.raw`(?<![\d.,/½¼¾⅛⅜⅝⅞⅓⅔])`;

/** A length in a wish: numbers as they were written, each with its unit where one was said. */
export interface SaidLength {
  readonly terms: readonly (readonly [number: string, unit: string | undefined])[];
}

/** A length of one number, or of a number and a smaller one after it: `5'6"`, `5 feet 6 inches`. */
export function makeLength([number = '', unit, more, moreUnit]: readonly (
  | string
  | undefined
)[]): SaidLength {
  const first = [number.trim(), tidyUnit(unit)] as const;
  return {
    terms: more === undefined ? [first] : [first, [more.trim(), tidyUnit(moreUnit)] as const],
  };
}

/**
 * A length as it stands in a request: a number where its unit is that of the request, else text with
 * its unit. What is unclear in it stays as it was written, so that it is said where it is read.
 *
 * @example
 * writeSaid({ terms: [['8 1/2', 'in']] }, 'in') // => '8 1/2'
 * writeSaid({ terms: [['30', 'cm']] }, 'in') // => '30 cm'
 * writeSaid({ terms: [['30', 'cm']] }, 'cm') // => 30
 */
export function writeSaid({ terms }: SaidLength, unit: Unit): Length {
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

/**
 * The unit of a request whose lengths are said in a unit of that name.
 *
 * @example
 * nameUnit('ft') // => 'in'
 * nameUnit('mm') // => 'cm'
 */
export function nameUnit(name: string | undefined): Unit | undefined {
  if (name === undefined) return undefined;
  return name === 'in' || name === 'ft' || name === 'yd' ? 'in' : 'cm';
}
