import { NUMBER_LIMITS } from '#core/limits.ts';

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
  const isGrid = rows.every((row) => /^[A-Z]+$/.test(row) && row.length === rows[0]?.length);
  const isSmall = Math.max(rows.length, rows[0]?.length ?? 0) <= NUMBER_LIMITS.layoutSide.most;
  return isGrid && isSmall ? rows : undefined;
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
  const isSameGrid = one.length === other.length && one[0]?.length === other[0]?.length;
  return isSameGrid && countLetters(one) === countLetters(other);
}

/** How often each letter stands in a grid, as a text: to count is quicker than to sort. */
function countLetters(cells: readonly string[]): string {
  const counts = new Int32Array(26);
  for (const row of cells) {
    for (let at = 0; at < row.length; at += 1) {
      const letter = row.charCodeAt(at) - 65;
      counts[letter] = (counts[letter] ?? 0) + 1;
    }
  }
  return counts.join();
}
