import type { Unit } from '../../contract.ts';
import { writeExact } from '../../write-length.ts';
import { typesetFractions } from '../typeset-fractions.ts';

/**
 * A length as it stands in a drawing: as a ruler has it, its fraction set as one.
 *
 * @example
 * sayMeasure(12.7, 'in') // => '½ in'
 */
export function sayMeasure(millimetres: number, unit: Unit): string {
  return typesetFractions(writeExact(millimetres, unit));
}
