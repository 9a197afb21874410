import type { Grid } from '../block/size-quilt.ts';
import type { Effort } from './find-layout.ts';
import { solveLayout } from './solve-layout.ts';

/** As much work as a plan can afford beside all else that it reckons. */
const EFFORT: Effort = { begin: 3000, repair: 8000, spread: 10, search: 0, work: 1_000_000 };
/** Exchanges weighed at most to spread the prints of a small quilt better. */
const SPREAD = 2000;

/**
 * Where each print of a plan goes: apart from its like at sides and corners where there are four prints
 * or more, at sides where there are fewer, since no layout of three is free of touching at corners.
 *
 * @param counts blocks of each print, summing to the cells of the grid
 * @returns a string a row from the top, a letter a block, A the first print
 *
 * @example
 * arrangePrints({ columns: 2, rows: 2 }, [2, 2]) // => ['AB', 'BA']
 */
export function arrangePrints(grid: Grid, counts: readonly number[]): readonly string[] {
  const prints = counts.filter((count) => count > 0).length;
  const touch = prints > 3 ? 'corners' : 'sides';
  const spread = Math.max(EFFORT.spread, Math.min(40, SPREAD / (grid.columns * grid.rows)));
  return solveLayout({ grid, counts, touch, seed: 0 }, { ...EFFORT, spread }).cells;
}
