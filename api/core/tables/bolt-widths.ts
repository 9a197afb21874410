import type { Unit } from '../contract.ts';

/** Widths that cloth is sold in, selvages included. Common practice, no source. */
const WIDTHS: Readonly<Record<Unit, readonly number[]>> = {
  in: [42, 44, 54, 58, 60, 108],
  cm: [110, 140, 150, 280],
};

/**
 * The widths that bolts usually have, narrowest first, in the unit given.
 *
 * @example
 * usualWidths('cm') // => [110, 140, 150, 280]
 */
export function usualWidths(unit: Unit): readonly number[] {
  return WIDTHS[unit];
}
