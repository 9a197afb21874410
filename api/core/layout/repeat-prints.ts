import type { Grid } from '../block/size-quilt.ts';
import { letterOf } from './letter-of.ts';

/** Cells looked at while counts are mended; beyond it a repeat is not worth the time. */
const REPAIR_STEPS = 20_000;

/**
 * Lays prints in a plain repeat, each row shifted against the one above: cell (row, column) takes
 * print (column + shift·row) mod P. With four prints or more a shift of two keeps like prints apart
 * even at corners. Prints are named so that the most frequent place goes to the print with most
 * blocks; where the counts of the repeat are still not those wanted, single blocks are changed where
 * it hurts least.
 *
 * @param counts blocks of each print, summing to the cells of the grid
 * @param shift whole, 0 or more
 * @returns a string a row from the top, a letter a block, with exactly those counts; nothing where
 * too many blocks would have to change
 *
 * @example
 * repeatPrints({ columns: 4, rows: 2 }, [2, 2, 2, 2], 2) // => ['ABCD', 'CDAB']
 */
export function repeatPrints(
  grid: Grid,
  counts: readonly number[],
  shift: number,
): readonly string[] | undefined {
  const cells = layRepeat(grid, counts, shift);
  const found = tally(cells, counts.length);
  const missing = counts.map((count, print) => count - (found[print] ?? 0));
  const changes = missing.reduce((sum, lack) => sum + Math.max(0, lack), 0);
  if (changes * grid.columns * grid.rows > REPAIR_STEPS) return undefined;
  mendCounts(cells, missing);
  return cells.map((line) => line.map(letterOf).join(''));
}

function layRepeat(grid: Grid, counts: readonly number[], shift: number): number[][] {
  const prints = counts.length;
  const places = Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) => (column + shift * row) % prints),
  );
  const found = tally(places, prints);
  const rank = (values: readonly number[]) =>
    values
      .map((value, index) => ({ value, index }))
      .toSorted((one, other) => other.value - one.value || one.index - other.index)
      .map((entry) => entry.index);
  const wanted = rank(counts);
  const names = new Map(rank(found).map((place, order) => [place, wanted[order] ?? 0]));
  return places.map((line) => line.map((place) => names.get(place) ?? 0));
}

function tally(cells: readonly (readonly number[])[], prints: number): number[] {
  const counts = Array.from({ length: prints }, () => 0);
  for (const print of cells.flat()) counts[print] = (counts[print] ?? 0) + 1;
  return counts;
}

/** Changes blocks of prints that are too many into prints that are too few, one at a time. */
function mendCounts(cells: number[][], missing: number[]): void {
  for (const [print, lack] of [...missing.entries()]) {
    for (let left = lack; left > 0; left -= 1) {
      const cell = leastHarm(cells, missing, print);
      const line = cells[cell?.row ?? -1];
      if (cell === undefined || line === undefined) return;
      missing[cell.print] = (missing[cell.print] ?? 0) + 1;
      line[cell.column] = print;
    }
  }
}

function leastHarm(
  cells: readonly (readonly number[])[],
  missing: readonly number[],
  print: number,
): { readonly row: number; readonly column: number; readonly print: number } | undefined {
  let best: { row: number; column: number; print: number } | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [row, line] of cells.entries()) {
    for (const [column, present] of line.entries()) {
      if ((missing[present] ?? 0) >= 0) continue;
      const harm = countAlike(cells, { row, column, print });
      if (harm >= least) continue;
      least = harm;
      best = { row, column, print: present };
    }
  }
  return best;
}

function countAlike(
  cells: readonly (readonly number[])[],
  at: { readonly row: number; readonly column: number; readonly print: number },
): number {
  let harm = 0;
  for (const down of [-1, 0, 1]) {
    for (const across of [-1, 0, 1]) {
      if (down === 0 && across === 0) continue;
      const isAlike = cells[at.row + down]?.[at.column + across] === at.print;
      if (isAlike) harm += down === 0 || across === 0 ? 100 : 1;
    }
  }
  return harm;
}
