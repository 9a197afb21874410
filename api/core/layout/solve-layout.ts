import { type LayoutTask, layOn, makeBoard, writeBoard } from './board.ts';
import { boundTouching } from './bound-touching.ts';
import { type Effort, findLayout } from './find-layout.ts';
import { isPaired, pairPrints } from './pair-prints.ts';
import { searchFewest } from './search-fewest.ts';
import { spreadPrints } from './spread-prints.ts';
import { startRandom } from './start-random.ts';

/** A layout and what is proven of every other. */
export interface Solved {
  /** A string a row from the top, a letter a block. */
  readonly cells: readonly string[];
  /** No layout with these counts and pins has fewer touching pairs. */
  readonly fewest: number;
}

/**
 * Where each print goes: the fewest touching pairs first, prints spread evenly over rows and columns
 * second, lights among darks third. Construction first, then search in a bounded number of steps.
 *
 * @param values lightness of each print, where every print has one
 */
export function solveLayout(task: LayoutTask, effort: Effort, values?: readonly number[]): Solved {
  const draw = startRandom(task.seed);
  const board = makeBoard(task);
  const least = boundTouching(task);
  let fewest = least;
  if (isPaired(task)) {
    const paired = pairPrints(task, draw(12));
    if (paired === undefined) fewest = Math.max(1, least);
    else return { cells: writeBoard(paired), fewest: 0 };
  }
  const pairs = findLayout(board, fewest, { effort, draw });
  if (pairs > fewest) {
    const searched = searchFewest(task, { least: fewest, most: pairs - 1 }, effort.search);
    if (searched.cells !== undefined) layOn(board, searched.cells);
    fewest = searched.fewest;
  }
  spreadPrints(board, { effort: effort.spread, draw, values });
  return { cells: writeBoard(board), fewest };
}
