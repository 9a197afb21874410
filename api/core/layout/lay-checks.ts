import type { Grid } from '../block/size-quilt.ts';
import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import { splitPrints } from './split-prints.ts';

/**
 * Lays prints on the two colours of a chessboard, whose cells of one colour share no side: each print
 * on one of them where they can be split so. Else they fill first the one colour from the top, then
 * the other from the top, the commonest first: then one print has the last cells of the one and the
 * first of the other, which only meet where it is nearly half of all.
 *
 * @param supply blocks there are of each print, no more than half the cells of each, rounded up
 * @returns the print of each cell, row by row, none used more often than there is of it; like prints
 * may still meet
 *
 * @example
 * layChecks({ columns: 3, rows: 2 }, [3, 2, 1]) // => [[1, 0, 1], [0, 2, 0]]
 */
export function layChecks(
  { columns, rows }: Grid,
  supply: readonly number[],
): readonly (readonly number[])[] {
  const cells = columns * rows;
  const part = (count: number) => ({ cells: count, most: count });
  const [dark, light] = [part(Math.ceil(cells / 2)), part(Math.floor(cells / 2))];
  const split = splitPrints(supply, dark, light);
  const share = (count: number, isFirst: boolean) =>
    listOut(
      apportionBlocks(
        count,
        supply.map((blocks, at) => (split?.[at] === isFirst ? Math.min(blocks, count) : 0)),
      ),
    );
  const line =
    split === undefined
      ? listOut(apportionBlocks(cells, supply))
      : [...share(dark.cells, true), ...share(light.cells, false)];
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const place = row * columns + column;
      // How many cells of this colour come before.
      const before =
        columns % 2 === 1 ? Math.floor(place / 2) : row * (columns / 2) + Math.floor(column / 2);
      const isDark = (row + column) % 2 === 0;
      return line[isDark ? before : dark.cells + before] ?? 0;
    }),
  );
}

/** The prints one after the other, the commonest first. */
function listOut(counts: readonly number[]): readonly number[] {
  return counts
    .map((count, print) => ({ count, print }))
    .toSorted((one, other) => other.count - one.count || one.print - other.print)
    .flatMap(({ count, print }) => Array.from({ length: count }, () => print));
}
