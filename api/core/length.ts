import type { Unit } from './contract.ts';

/**
 * Millimetres in each unit, exact: the international yard and pound agreement of 1959
 * (1 yd = 0.9144 m, hence 1 in = 25.4 mm).
 */
export const MILLIMETRES = { in: 25.4, ft: 304.8, yd: 914.4, mm: 1, cm: 10, m: 1000 } as const;

/**
 * Turns a number in inches or centimetres into millimetres.
 *
 * @example
 * toMillimetres(10, 'in') // => 254
 */
export function toMillimetres(value: number, unit: Unit): number {
  return tidy(value * MILLIMETRES[unit]);
}

/**
 * Turns millimetres into a number of inches or centimetres, rounded to `digits` decimals (4 unless told).
 *
 * @example
 * fromMillimetres(215, 'in') // => 8.4646
 */
export function fromMillimetres(millimetres: number, unit: Unit, digits = 4): number {
  return roundTo(millimetres / MILLIMETRES[unit], digits);
}

/**
 * Rounds half away from zero to `digits` decimals; never gives minus zero.
 *
 * @example
 * roundTo(2.00005, 4) // => 2.0001
 */
export function roundTo(value: number, digits: number): number {
  const scale = 10 ** digits;
  // A few last bits more, so that a half lost in the last bits of a product is still a half.
  const scaled = Math.round(Math.abs(value) * scale * (1 + 4 * Number.EPSILON)) / scale;
  return scaled === 0 ? 0 : value < 0 ? -scaled : scaled;
}

/**
 * Rounds a length in millimetres to a millionth of a micrometre, dropping the last bits of a product
 * such as 8.4 · 25.4, so that equal lengths are equal numbers.
 *
 * @example
 * tidy(0.1 + 0.2) // => 0.3
 */
export function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}
