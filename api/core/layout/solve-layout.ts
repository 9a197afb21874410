import { hasPins, type LayoutTask, layOn, makeBoard, writeBoard } from './board.ts';
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

/** Part of all steps that beginning and repair may use: more with pins, which leave less to spread. */
const FIRST = { loose: 0.5, pinned: 0.8 } as const;

/** A board of so few blocks is searched so many times as far: that settles every one of five prints up to 4 by 5. */
const SMALL = { blocks: 20, times: 5 } as const;

/** Steps that one block laid in the exact search is worth. */
const LAID = 20;

/**
 * Where each print goes: the fewest touching pairs first, prints spread evenly over rows and columns
 * second, lights among darks third. Construction first, then search in a bounded number of steps.
 *
 * @param values lightness of each print, where every print has one
 */
export function solveLayout(task: LayoutTask, effort: Effort, values?: readonly number[]): Solved {
  const draw = startRandom(task.seed);
  const first = (hasPins(task) ? FIRST.pinned : FIRST.loose) * effort.work;
  const board = makeBoard(task, first);
  const least = boundTouching(task);
  let fewest = least;
  if (isPaired(task)) {
    const paired = pairPrints(task, draw(12));
    if (paired === undefined) fewest = Math.max(1, least);
    else return { cells: writeBoard(paired), fewest: 0 };
  }
  const pairs = findLayout(board, fewest, { effort, draw });
  board.work.left += effort.work - first;
  if (pairs > fewest) {
    const isSmall = board.places.length <= SMALL.blocks;
    const steps = effort.search * (isSmall ? SMALL.times : 1);
    const searched = searchFewest(task, { least: fewest, most: pairs - 1 }, steps);
    board.work.left -= LAID * searched.spent;
    if (searched.cells !== undefined) layOn(board, searched.cells);
    fewest = searched.fewest;
  }
  spreadPrints(board, { effort: effort.spread, draw, values });
  return { cells: writeBoard(board), fewest };
}
