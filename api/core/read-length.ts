import type { Unit } from './contract.ts';
import { MILLIMETRES, tidy, toMillimetres } from './length.ts';
import { fail, type Outcome, succeed } from './outcome.ts';

type NamedUnit = keyof typeof MILLIMETRES;

const UNIT_WORDS: Readonly<Record<NamedUnit, string>> = {
  in: 'in ins inch inches "',
  ft: "ft foot feet '",
  yd: 'yd yds yard yards',
  mm: 'mm millimetre millimetres millimeter millimeters',
  cm: 'cm cms centimetre centimetres centimeter centimeters',
  m: 'm metre metres meter meters',
};

const UNITS: ReadonlyMap<string, NamedUnit> = new Map(
  (Object.keys(UNIT_WORDS) as NamedUnit[]).flatMap((unit) =>
    UNIT_WORDS[unit].split(' ').map((word) => [word, unit] as const),
  ),
);

const GLYPHS = '½1/2 ⅓1/3 ⅔2/3 ¼1/4 ¾3/4 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6'.split(
  ' ',
);

/** A whole number, a decimal with point or comma, or a fraction with or without whole part. */
const TERM = /^(?:(\d+)(?: |- ?))?(\d+) ?\/ ?(\d+)$|^(\d+(?:[.,]\d*)?|[.,]\d+)$/;
/** A term, its unit, and what may stand before the next term. */
const TERM_WITH_UNIT = /([\d.,/ -]*[\d.,]) ?(?:([a-z]+)\.?|(['"]))?(?:$|(?:,? |-)?(?=[.,]?\d))/gy;

/**
 * Reads a length as people write it.
 *
 * Numbers are in `unit`. Text may hold a decimal with point or comma (`21.5`, `21,5`), a fraction
 * (`3/8`, `8 1/2`, `8-1/2`, `8½`, `8⅜`), a unit of its own (`in " ft ' yd mm cm m`, written out or
 * not) and several terms from large to small (`4' 2"`, `1 yd 9 in`). A comma followed by exactly
 * three digits could be a thousand or a decimal and is refused, and so is `8 - 1/2`, which could be
 * a sum. Typographic quotes, hyphens, spaces and full-width signs are read as their plain ones.
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
    const value = toMillimetres(given, unit);
    return Number.isFinite(value) && given >= 0 ? succeed(value) : refuse('not-a-length', given);
  }
  const text = plainText(given);
  if (text === '') return refuse('empty', given);
  if (/(^|[^\d.,])[1-9]\d{0,2}(,\d{3})+(?![\d,])/.test(text)) return refuse('unclear-comma', given);
  const millimetres = readTerms(text, unit);
  return millimetres === undefined ? refuse('not-a-length', given) : succeed(millimetres);
}

type Length = number | string;

function refuse(code: 'empty' | 'not-a-length' | 'unclear-comma', given: Length): Outcome<never> {
  return fail([{ code, path: [], received: given }]);
}

/** Writes every sign in its plain form, spaces single, letters small. */
function plainText(given: string): string {
  const signs = GLYPHS.reduce(
    (text, glyph) => text.replaceAll(glyph.charAt(0), ` ${glyph.slice(1)}`),
    given,
  );
  return signs
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[⁄∕]/g, '/')
    .replace(/[‘’′]/g, "'")
    .replace(/[“”″]|''/g, '"')
    .replace(/[‐‑–]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
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
    const word = match[2] ?? match[3];
    if (word === undefined && terms > 0) return undefined;
    const named = word === undefined ? unit : UNITS.get(word);
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
