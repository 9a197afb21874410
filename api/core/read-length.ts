import type { Unit } from './contract.ts';
import { MILLIMETRES, tidy, toMillimetres } from './length.ts';
import { fail, type Outcome, succeed } from './outcome.ts';

type NamedUnit = keyof typeof MILLIMETRES;

const UNIT_WORDS: Readonly<Record<string, NamedUnit>> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '′': 'ft',
  '’': 'ft',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
};

const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** A whole number, a decimal with point or comma, or a fraction with or without whole part. */
const TERM = /^(?:(\d+)(?:[ -]+|(?= *\d+ *\/)) *)?(\d+) *\/ *(\d+)$|^(\d+(?:[.,]\d*)?|[.,]\d+)$/;
const TERM_WITH_UNIT = /([\d.,/ -]*[\d.,])\s*([a-z]+|''|["″”'′’])?\s*/gy;

/**
 * Reads a length as people write it.
 *
 * Numbers are in `unit`. Text may hold a decimal with point or comma (`21.5`, `21,5`), a fraction
 * (`3/8`, `8 1/2`, `8-1/2`, `8½`, `8⅜`), a unit of its own (`in " ft ' yd mm cm m`, written out or
 * not) and several terms from large to small (`4' 2"`, `1 yd 9 in`). A comma followed by exactly
 * three digits could be a thousand or a decimal and is refused.
 *
 * @param given number in `unit`, or text
 * @param unit the unit of a bare number
 * @returns millimetres, zero or more; faults `empty`, `not-a-length`, `unclear-comma` with an empty path
 *
 * @example
 * readLength('8 1/2', 'in') // => { ok: true, value: 215.9 }
 * readLength('21,5', 'cm') // => { ok: true, value: 215 }
 * readLength('0.75 yd', 'cm') // => { ok: true, value: 685.8 }
 */
export function readLength(given: Length, unit: Unit): Outcome<number> {
  if (typeof given === 'number') {
    return Number.isFinite(given) && given >= 0
      ? succeed(toMillimetres(given, unit))
      : refuse('not-a-length', given);
  }
  const text = given
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (glyph) => ` ${GLYPHS[glyph] ?? ''}`)
    .replace(/⁄/g, '/')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .trim()
    .toLowerCase();
  if (text === '') return refuse('empty', given);
  if (/(^|[^\d.,])[1-9]\d{0,2}(,\d{3})+(?![\d,])/.test(text)) return refuse('unclear-comma', given);
  const millimetres = readTerms(text, unit);
  return millimetres === undefined ? refuse('not-a-length', given) : succeed(millimetres);
}

type Length = number | string;

function refuse(code: 'empty' | 'not-a-length' | 'unclear-comma', given: Length): Outcome<never> {
  return fail([{ code, path: [], received: given }]);
}

/** Adds the terms of `4' 2"`; each must name a smaller unit than the one before it. */
function readTerms(text: string, unit: Unit): number | undefined {
  TERM_WITH_UNIT.lastIndex = 0;
  let total = 0;
  let size = Number.POSITIVE_INFINITY;
  let terms = 0;
  while (TERM_WITH_UNIT.lastIndex < text.length) {
    const match = TERM_WITH_UNIT.exec(text);
    if (match === null) return undefined;
    const word = match[2];
    if (word === undefined && terms > 0) return undefined;
    const named = word === undefined ? unit : UNIT_WORDS[word];
    const value = readNumber((match[1] ?? '').trim());
    if (named === undefined || value === undefined || MILLIMETRES[named] >= size) return undefined;
    size = MILLIMETRES[named];
    total += value * size;
    terms += 1;
  }
  return Number.isFinite(total) ? tidy(total) : undefined;
}

function readNumber(text: string): number | undefined {
  const match = TERM.exec(text);
  if (match === null) return undefined;
  const [, whole, above, below, decimal] = match;
  if (decimal !== undefined) return Number(decimal.replace(',', '.'));
  const denominator = Number(below);
  return denominator === 0 ? undefined : Number(whole ?? 0) + Number(above) / denominator;
}
