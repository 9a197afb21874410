import type { Unit } from './contract.ts';

/** Grams in each unit of mass; the pound is exact by the agreement of 1959. */
export const GRAMS = { lb: 453.59237, kg: 1000 } as const;

/**
 * The unit of mass that goes with a unit of length.
 *
 * @example
 * massUnit('in') // => 'lb'
 */
export function massUnit(unit: Unit): keyof typeof GRAMS {
  return unit === 'in' ? 'lb' : 'kg';
}
