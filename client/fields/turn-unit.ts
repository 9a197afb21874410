import type { Unit } from '#core/contract.ts';

/** In centimetres, exactly (international yard and pound agreement, 1959); the core brings more than that along. */
const INCH = 2.54;

/**
 * A length of the other unit in this one, to four decimals.
 *
 * @example
 * turnUnit(10, 'cm') // => 25.4
 * turnUnit(25.4, 'in') // => 10
 */
export function turnUnit(value: number, unit: Unit): number {
  return Number((unit === 'cm' ? value * INCH : value / INCH).toFixed(4));
}
