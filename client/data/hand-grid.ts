/** A grid as somebody laid it by hand, kept in the fragment of an address: `#ABA-BAB`, a row between hyphens. */

/**
 * Reads a grid out of a fragment.
 *
 * @returns nothing where the fragment is none: letters alone, and every row as long as the first.
 *
 * @example
 * readHand('#ABA-BAB') // => ['ABA', 'BAB']
 * readHand('#work') // => undefined
 */
export function readHand(fragment: string): readonly string[] | undefined {
  const rows = fragment.replace(/^#/, '').split('-');
  const isGrid = rows.every((row) => /^[A-Z]{1,40}$/.test(row) && row.length === rows[0]?.length);
  return isGrid && rows.length <= 40 ? rows : undefined;
}

/**
 * Writes a grid as a fragment, its `#` included; nothing where there is none.
 *
 * @example
 * writeHand(['ABA', 'BAB']) // => '#ABA-BAB'
 */
export function writeHand(cells: readonly string[] | undefined): string {
  return cells === undefined ? '' : `#${cells.join('-')}`;
}

/**
 * Whether one grid is another with its blocks laid otherwise.
 *
 * @example
 * isRearranged(['AB', 'BA'], ['BA', 'AB']) // => true
 * isRearranged(['AB', 'BA'], ['AAAB']) // => false
 */
export function isRearranged(one: readonly string[], other: readonly string[]): boolean {
  const sort = (cells: readonly string[]) => [...cells.join('')].sort().join('');
  const isSameGrid = one.length === other.length && one[0]?.length === other[0]?.length;
  return isSameGrid && sort(one) === sort(other);
}
