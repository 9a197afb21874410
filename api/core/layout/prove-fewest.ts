import type { LayoutTask } from './board.ts';
import { boundTouching } from './bound-touching.ts';
import { isPaired, pairPrints } from './pair-prints.ts';
import { searchFewest } from './search-fewest.ts';

/**
 * A proven lower bound on the touching pairs of any layout, with no layout at hand: counting, the
 * twelve ways of four prints, and an exact search as far as its steps go.
 *
 * @param steps blocks laid in the exact search at most
 *
 * @example
 * proveFewest({ grid: { columns: 2, rows: 2 }, counts: [2, 2], touch: 'corners', seed: 1 }, 1000) // => 2
 */
export function proveFewest(task: LayoutTask, steps: number): number {
  const bound = boundTouching(task);
  const least = isPaired(task) && pairPrints(task, 0) === undefined ? Math.max(1, bound) : bound;
  if (isPaired(task) && least === 0) return 0;
  const pairs = 4 * task.grid.columns * task.grid.rows;
  return searchFewest(task, { least, most: pairs }, steps).fewest;
}
