/**
 * A number with its noun, in the plural where it is not one.
 *
 * @example
 * sayCount(1, 'block') // => '1 block'
 * sayCount(3, 'row') // => '3 rows'
 */
export function sayCount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
