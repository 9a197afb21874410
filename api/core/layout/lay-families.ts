import type { Grid } from '../block/size-quilt.ts';
import { apportionBlocks } from '../cloth/apportion-blocks.ts';
import { dealEvenly } from './deal-evenly.ts';
import { spaceOut } from './space-out.ts';
import { splitPrints } from './split-prints.ts';

/**
 * Lays prints in two families of rows: those of the one stand in rows 1, 3, 5 ..., those of the other
 * in rows 2, 4, 6 ... So like prints can only meet beside each other in a row, and each row is spaced
 * out. Succeeds exactly where the prints can be split so; then nothing touches, not even at corners.
 *
 * Each row of a family gets ⌊x/rows⌋ or ⌈x/rows⌉ of a print's x blocks, so no more than ⌈n/2⌉ of it.
 *
 * @param supply blocks there are of each print
 * @returns the print of each cell, row by row, none used more often than there is of it; nothing
 * where no split will do
 *
 * @example
 * layFamilies({ columns: 3, rows: 2 }, [2, 2, 2, 2]) // => [[2, 3, 2], [0, 1, 0]]
 */
export function layFamilies(
  { columns, rows }: Grid,
  supply: readonly number[],
): readonly (readonly number[])[] | undefined {
  const most = Math.ceil(columns / 2);
  const part = (count: number) => ({ rows: count, cells: count * columns, most: count * most });
  const odd = part(Math.ceil(rows / 2));
  const even = part(Math.floor(rows / 2));
  const split = splitPrints(supply, odd, even);
  if (split === undefined) return undefined;
  const family = (isOdd: boolean) => supply.map((blocks, at) => (split[at] === isOdd ? blocks : 0));
  const [upper, lower] = [layRows(family(true), odd), layRows(family(false), even)];
  return Array.from({ length: rows }, (_, row) => {
    const lines = row % 2 === 0 ? upper : lower;
    return lines[Math.floor(row / 2)] ?? [];
  });
}

function layRows(
  supply: readonly number[],
  part: { readonly rows: number; readonly cells: number; readonly most: number },
): readonly (readonly number[])[] {
  if (part.rows === 0) return [];
  const capped = supply.map((blocks) => Math.min(blocks, part.most));
  const totals = apportionBlocks(part.cells, capped);
  return dealEvenly(totals, part.rows).flatMap(({ hands, each }) =>
    Array.from({ length: hands }, () => spaceOut(each)),
  );
}
