/** A roll of cloth; lengths in millimetres, rates as fractions. */
export interface Roll {
  readonly width: number;
  /** Cut away at each edge. */
  readonly selvage: number;
  /** Shrink of a prewash along and across the roll. */
  readonly prewash: { readonly length: number; readonly width: number };
}

/**
 * What can be cut across a roll: width·(1 − prewash crosswise) − 2·selvage.
 * Cutting the selvages away at both edges is common practice, no source.
 *
 * @returns mm, zero or less where nothing is left
 *
 * @example
 * usableWidth({ width: 1000, selvage: 10, prewash: { length: 0, width: 0.02 } }) // => 960
 */
export function usableWidth(roll: Roll): number {
  return roll.width * (1 - roll.prewash.width) - 2 * roll.selvage;
}
