/**
 * The letter of a print by its place: 0 is A, 25 is Z.
 *
 * @example
 * letterOf(2) // => 'C'
 */
export function letterOf(index: number): string {
  return String.fromCharCode(65 + index);
}
