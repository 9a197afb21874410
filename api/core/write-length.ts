import type { Unit } from './contract.ts';
import { MILLIMETRES, roundTo } from './length.ts';

/**
 * Writes a length as a person would: to the nearest eighth of an inch, or the nearest millimetre
 * in centimetres, with its unit.
 *
 * @example
 * writeLength(215.9, 'in') // => '8 1/2 in'
 * writeLength(215.9, 'cm') // => '21.6 cm'
 */
export function writeLength(millimetres: number, unit: Unit): string {
  if (unit === 'cm') return `${roundTo(millimetres / 10, 1)} cm`;
  return `${writeEighths(millimetres / MILLIMETRES.in)} in`;
}

/**
 * Writes a length to be set on a ruler, without rounding it away: in sixteenths where it is one, else
 * as a decimal to a hundredth of an inch or a tenth of a millimetre.
 *
 * @example
 * writeExact(215.9, 'in') // => '8 1/2 in'
 * writeExact(11.1125, 'in') // => '7/16 in'
 * writeExact(210.82, 'in') // => '8.3 in'
 */
export function writeExact(millimetres: number, unit: Unit): string {
  const value = millimetres / MILLIMETRES[unit];
  if (unit === 'cm') return `${roundTo(value, 2)} cm`;
  const isOnRuler = Math.abs(value * 16 - Math.round(value * 16)) < 0.01;
  return isOnRuler ? `${writeParts(value, 16)} in` : `${roundTo(value, 2)} in`;
}

/**
 * Writes a gap that must not be overstated: rounded down to a sixteenth of an inch or a tenth of a
 * millimetre, and never one above nothing as nothing.
 *
 * @param millimetres above 0
 *
 * @example
 * writeGap(6.35, 'in') // => '1/4 in'
 * writeGap(5, 'in') // => '3/16 in'
 * writeGap(1, 'in') // => 'less than 1/16 in'
 */
export function writeGap(millimetres: number, unit: Unit): string {
  const parts = unit === 'in' ? 16 : 100;
  const whole = Math.floor((millimetres / MILLIMETRES[unit]) * parts + 1e-6);
  if (whole === 0) return unit === 'in' ? 'less than 1/16 in' : 'less than 0.01 cm';
  return unit === 'in' ? `${writeParts(whole / parts, parts)} in` : `${whole / parts} cm`;
}

/**
 * Writes a number to the nearest eighth as a mixed fraction in lowest terms.
 *
 * @example
 * writeEighths(2.375) // => '2 3/8'
 * writeEighths(0.75) // => '3/4'
 */
export function writeEighths(value: number): string {
  return writeParts(value, 8);
}

/** Writes a number to the nearest part, a power of two, as a mixed fraction in lowest terms. */
function writeParts(value: number, parts: number): string {
  const count = Math.round(Math.abs(value) * parts);
  const sign = value < 0 && count > 0 ? '-' : '';
  const whole = Math.floor(count / parts);
  let above = count % parts;
  let below = parts;
  if (above === 0) return `${sign}${whole}`;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${above}/${below}`;
}
