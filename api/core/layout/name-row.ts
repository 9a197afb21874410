import { letterOf } from './letter-of.ts';

/**
 * The name of a row of blocks by its place from the top: A to Z, then AA, AB and so on.
 *
 * @param index 0 for the top row, up to 701
 *
 * @example
 * nameRow(2) // => 'C'
 * nameRow(27) // => 'AB'
 */
export function nameRow(index: number): string {
  return `${index < 26 ? '' : letterOf(Math.floor(index / 26) - 1)}${letterOf(index % 26)}`;
}
