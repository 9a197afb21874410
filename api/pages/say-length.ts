import type { Pair, Unit } from '#core/contract.ts';
import { toMillimetres } from '#core/length.ts';
import { writeLength } from '#core/write-length.ts';

/**
 * A length of an answer as a person would write it, to the eighth of an inch or the millimetre.
 *
 * @param length in `unit`
 * @example
 * sayLength(8.5, 'in') // => '8 1/2 in'
 */
export function sayLength(length: number, unit: Unit): string {
  return writeLength(toMillimetres(length, unit), unit);
}

/**
 * Both sides of something, the width first.
 *
 * @example
 * saySides({ width: 40, height: 50.5 }, 'in') // => '40 in by 50 1/2 in'
 */
export function saySides({ width, height }: Pair, unit: Unit): string {
  return `${sayLength(width, unit)} by ${sayLength(height, unit)}`;
}
