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
 * Writes a length to be set on a ruler, without rounding it away: in eighths where it is one, else as a
 * decimal to a hundredth of an inch or a tenth of a millimetre.
 *
 * @example
 * writeExact(215.9, 'in') // => '8 1/2 in'
 * writeExact(210.82, 'in') // => '8.3 in'
 */
export function writeExact(millimetres: number, unit: Unit): string {
  const value = roundTo(millimetres / MILLIMETRES[unit], 2);
  if (unit === 'cm') return `${value} cm`;
  const isEighths = Math.abs(value * 8 - Math.round(value * 8)) < 0.05;
  return isEighths ? writeLength(millimetres, unit) : `${value} in`;
}

/**
 * Writes a small gap as `writeLength` does, but never one above nothing as nothing.
 *
 * @param millimetres above 0
 *
 * @example
 * writeGap(6.35, 'in') // => '1/4 in'
 * writeGap(1, 'in') // => 'less than 1/16 in'
 */
export function writeGap(millimetres: number, unit: Unit): string {
  if (unit === 'cm')
    return millimetres < 0.5 ? 'less than 0.05 cm' : writeLength(millimetres, unit);
  return millimetres < MILLIMETRES.in / 16 ? 'less than 1/16 in' : writeLength(millimetres, unit);
}

/**
 * Writes a number to the nearest eighth as a mixed fraction in lowest terms.
 *
 * @example
 * writeEighths(2.375) // => '2 3/8'
 * writeEighths(0.75) // => '3/4'
 */
export function writeEighths(value: number): string {
  const eighths = Math.round(Math.abs(value) * 8);
  const sign = value < 0 && eighths > 0 ? '-' : '';
  const whole = Math.floor(eighths / 8);
  const rest = eighths % 8;
  if (rest === 0) return `${sign}${whole}`;
  const divisor = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const fraction = `${rest / divisor}/${8 / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}
