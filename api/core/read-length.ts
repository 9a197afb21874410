import type { Unit } from './contract.ts';
import type { FaultCode } from './faults.ts';
import { judgeLength } from './judge-length.ts';
import { toMillimetres } from './length.ts';
import { fail, type Outcome, succeed } from './outcome.ts';
import { readTerms } from './read-terms.ts';
import { writePlain } from './write-plain.ts';

/** A comma before three digits and no other sign: thousands, or a decimal. */
const UNCLEAR = /(?:^|[^\d.,])[1-9]\d{0,2},\d{3}(?!\d|[.,]\d)/;

/**
 * Reads a length as people write it.
 *
 * Numbers are in `unit`. Text may hold a decimal with point or comma (`21.5`, `21,5`), a fraction
 * (`3/8`, `8 1/2`, `8-1/2`, `8½`, `8⅜`), a unit of its own (`in " ft ' yd mm cm m`, written out or
 * not, in English, German, Spanish or French) and several terms from large to small (`4' 2"`,
 * `1 yd 9 in`). A point is that of a decimal, as in every number on the wire. A comma followed by
 * exactly three digits could be a thousand or a decimal and is refused; with both signs, or with two
 * of one, only thousands can be meant (`1.250,5`, `1,250.5`). `8 - 1/2` could be a sum and is refused.
 * Typographic quotes, hyphens, spaces, full-width and Arabic digits are read as their plain ones.
 *
 * @param given number in `unit`, or text
 * @param unit the unit of a bare number
 * @returns millimetres, zero or more; faults with an empty path: `empty`, `unclear-comma`,
 * `negative-length`, `zero-parts`, `two-lengths`, `unknown-unit`, else `not-a-length`
 *
 * @example
 * readLength('8 1/2', 'in') // => { ok: true, value: 215.9 }
 * readLength('21,5', 'cm') // => { ok: true, value: 215 }
 * readLength('0.75 yd', 'cm') // => { ok: true, value: 685.8 }
 */
export function readLength(given: Length, unit: Unit): Outcome<number> {
  if (typeof given === 'number') {
    const value = toMillimetres(given, unit);
    if (given < 0) return refuse('negative-length', given);
    return Number.isFinite(value) ? succeed(value) : refuse('not-a-length', given);
  }
  const text = writePlain(given);
  if (text === '') return refuse('empty', given);
  if (UNCLEAR.test(text)) return refuse('unclear-comma', given);
  const millimetres = readTerms(text, unit);
  return millimetres === undefined ? refuse(judgeLength(text), given) : succeed(millimetres);
}

type Length = number | string;

function refuse(code: FaultCode, given: Length): Outcome<never> {
  return fail([{ code, path: [], received: given }]);
}
