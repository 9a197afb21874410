import type { Grid } from '../block/size-quilt.ts';
import { letterOf } from './letter-of.ts';

/**
 * Deals the blocks of each print over the grid, row by row: each cell takes the print with the
 * largest share of its blocks still to lay among those that touch no like print, not even at a
 * corner; where none is left, one that touches at a corner only; else any. A plain rule, not a
 * search: it does not promise the fewest touching pairs.
 *
 * @param counts blocks of each print, summing to the cells of the grid
 * @returns a string a row from the top, a letter a block, A the first print
 *
 * @example
 * dealPrints({ columns: 4, rows: 2 }, [2, 2, 2, 2]) // => ['ABCD', 'CDAB']
 */
export function dealPrints(grid: Grid, counts: readonly number[]): readonly string[] {
  const left = [...counts];
  const cells: number[][] = [];
  for (let row = 0; row < grid.rows; row += 1) {
    const line: number[] = [];
    cells.push(line);
    for (let column = 0; column < grid.columns; column += 1) {
      const above = cells[row - 1];
      const beside = [line[column - 1], above?.[column]];
      const corners = [above?.[column - 1], above?.[column + 1]];
      const choose = (refused: readonly (number | undefined)[]) => fullest(left, counts, refused);
      const print = choose([...beside, ...corners]) ?? choose(beside) ?? choose([]) ?? 0;
      left[print] = (left[print] ?? 0) - 1;
      line.push(print);
    }
  }
  return cells.map((line) => line.map(letterOf).join(''));
}

/** The print with the largest share still to lay, ties to the earlier. */
function fullest(
  left: readonly number[],
  counts: readonly number[],
  refused: readonly (number | undefined)[],
): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (const [print, count] of left.entries()) {
    const share = count / (counts[print] ?? 1);
    if (count > 0 && !refused.includes(print) && share > most + 1e-12) {
      best = print;
      most = share;
    }
  }
  return best;
}
