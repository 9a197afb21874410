import type { Grid } from '../block/size-quilt.ts';
import { countTouching } from './count-touching.ts';
import { dealPrints } from './deal-prints.ts';
import { repeatPrints } from './repeat-prints.ts';

/** Shifts of a repeat worth trying, along rows or columns: one keeps sides apart, two and three corners too. */
const SHIFTS = [2, 1, 3] as const;

/**
 * Where each print goes: the best of a few plain repeats and a plain deal, by the fewest like prints
 * side by side, then by the fewest meeting at a corner. Not a search: it does not promise that no
 * arrangement touches less.
 *
 * @param counts blocks of each print, summing to the cells of the grid
 * @returns a string a row from the top, a letter a block, A the first print
 *
 * @example
 * arrangePrints({ columns: 4, rows: 2 }, [2, 2, 2, 2]) // => ['ABCD', 'CDAB']
 */
export function arrangePrints(grid: Grid, counts: readonly number[]): readonly string[] {
  const turned = { columns: grid.rows, rows: grid.columns };
  const tried = [
    ...SHIFTS.map((shift) => repeatPrints(grid, counts, shift)),
    dealPrints(grid, counts),
    ...SHIFTS.map((shift) => turn(repeatPrints(turned, counts, shift))),
  ].filter((cells) => cells !== undefined);
  return tried.reduce((best, cells) => (score(cells) < score(best) ? cells : best));
}

/** Rows for columns. */
function turn(cells: readonly string[] | undefined): readonly string[] | undefined {
  const [first] = cells ?? [];
  if (cells === undefined || first === undefined) return undefined;
  return [...first].map((_, column) => cells.map((line) => line.charAt(column)).join(''));
}

/** A side weighs more than all corners of the greatest quilt. */
function score(cells: readonly string[]): number {
  const { sides, corners } = countTouching(cells);
  return sides * 10_000 + corners;
}
