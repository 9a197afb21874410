import type { Grid } from '../block/size-quilt.ts';
import { countTouching } from './count-touching.ts';
import { dealPrints } from './deal-prints.ts';
import { repeatPrints } from './repeat-prints.ts';

/** Shifts of a repeat worth trying: one keeps sides apart, two and three corners too. */
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
  const repeats = SHIFTS.map((shift) => repeatPrints(grid, counts, shift));
  const tried = [...repeats, dealPrints(grid, counts)].filter((cells) => cells !== undefined);
  return tried.reduce((best, cells) => (score(cells) < score(best) ? cells : best));
}

/** A side weighs more than all corners of the greatest quilt. */
function score(cells: readonly string[]): number {
  const { sides, corners } = countTouching(cells);
  return sides * 10_000 + corners;
}
