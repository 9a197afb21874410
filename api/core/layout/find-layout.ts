import { type Board, countLeft, PAIR, weighHarm } from './board.ts';
import { listStarts } from './list-starts.ts';
import { mendCounts } from './mend-counts.ts';
import { repairTouching } from './repair-touching.ts';
import type { Draw } from './start-random.ts';
import { tallyBoard } from './tally-board.ts';

/** How long to look, in steps and never in seconds, so that answers stay the same. */
export interface Effort {
  /** Blocks laid in beginning anew; one way to begin is always tried. */
  readonly begin: number;
  /** Exchanges weighed to part what touches. */
  readonly repair: number;
  /** Exchanges weighed for each loose block to spread the prints. */
  readonly spread: number;
  /** Blocks laid in an exact search for what is left between found and proven. */
  readonly search: number;
  /** Steps for all of these together: what beginning and repair leave goes to the search and the spread. */
  readonly work: number;
}

/** Steps for each cell to lay a board anew, to weigh it and to tally it. */
const FRESH = 20;

/** Part of the exchanges that each way to begin is granted, so that a rough one shows what it is worth. */
const TRIES = 30;

/**
 * Exchanges weighed for each loose block at most, with each way to begin and with the best: beyond, a
 * small board has been seen from all sides.
 */
const PATIENCE = { begin: 50, best: 1000 } as const;

/**
 * Looks for a layout with few touching pairs: a number of ways to begin, each mended a little by
 * exchanges until one reaches the goal, else the best of them mended further.
 *
 * @param board pinned blocks on it; left full, with the counts of its task
 * @param goal touching pairs proven to be the fewest
 * @returns touching pairs found
 */
export function findLayout(
  board: Board,
  goal: number,
  how: { readonly effort: Effort; readonly draw: Draw },
): number {
  const { effort, draw } = how;
  const empty = board.cells.slice();
  let best = empty;
  let least = Number.POSITIVE_INFINITY;
  let laid = 0;
  const repair = (harm: number, most: number, patience: number) => {
    if (harm <= goal * PAIR) return harm;
    const steps = Math.min(most, patience * board.loose.length);
    return repairTouching(board, tallyBoard(board), { harm, draw, goal: goal * PAIR, steps });
  };
  for (const lay of listStarts(board, draw)) {
    board.cells.set(empty);
    board.work.left -= FRESH * board.places.length;
    lay(board);
    if (countLeft(board).some((lack) => lack !== 0)) mendCounts(board, tallyBoard(board));
    const harm = repair(weighHarm(board), effort.repair / TRIES, PATIENCE.begin);
    if (harm < least) {
      least = harm;
      best = board.cells.slice();
    }
    laid += board.loose.length;
    if (least <= goal * PAIR || laid >= effort.begin || board.work.left <= 0) break;
  }
  board.cells.set(best);
  return Math.floor(repair(least, effort.repair, PATIENCE.best) / PAIR);
}
