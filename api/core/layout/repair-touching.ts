import type { Board } from './board.ts';
import type { Draw } from './start-random.ts';
import { harmBetween, relay, type Tally, weighSwap } from './tally-board.ts';

/** One repair: where it begins and how far it may go. */
export interface Repair {
  /** Harm at the start. */
  readonly harm: number;
  /** Harm at which it stops. */
  readonly goal: number;
  /** Exchanges weighed at most. */
  readonly steps: number;
  readonly draw: Draw;
}

/**
 * Lessens the touching pairs of a full board by exchanging two blocks at a time: one that touches its
 * like with whichever block makes the total least, even where that is more than before; a cell that
 * has just changed may not change back for a while (tabu search, Glover 1986).
 *
 * @param board left in the best state found
 * @param tally kept true
 * @returns harm at the end
 */
export function repairTouching(
  board: Board,
  tally: Tally,
  { draw, goal, ...start }: Repair,
): number {
  const { cells, loose } = board;
  const until = new Int32Array(cells.length);
  let harm = start.harm;
  let best = harm;
  let saved = cells.slice();
  let weighed = 0;
  for (let round = 1; best > goal && weighed < start.steps && board.work.left > 0; round += 1) {
    const place = pickTouching(board, tally, draw);
    if (place === undefined) break;
    weighed += loose.length;
    board.work.left -= loose.length;
    const other = pickPartner(board, tally, { place, round, until, spare: harm - best, draw });
    if (other === undefined) continue;
    harm += weighSwap(board, tally, place, other);
    swap(board, tally, place, other);
    until[place] = round + 5 + draw(10);
    until[other] = round + 5 + draw(10);
    if (harm < best) {
      best = harm;
      saved = cells.slice();
    }
  }
  restore(board, tally, saved);
  return best;
}

/** A loose cell that touches its like, sought from a chance place on. */
function pickTouching({ cells, loose, prints }: Board, tally: Tally, draw: Draw) {
  const start = draw(loose.length);
  for (let at = 0; at < loose.length; at += 1) {
    const turn = start + at;
    const place = loose[turn < loose.length ? turn : turn - loose.length] ?? 0;
    if ((tally.near[place * prints + (cells[place] ?? 0)] ?? 0) > 0) return place;
  }
  return undefined;
}

interface Choice {
  readonly place: number;
  readonly round: number;
  readonly until: Int32Array;
  /** By how much the harm is above the best so far. */
  readonly spare: number;
  readonly draw: Draw;
}

function pickPartner(board: Board, tally: Tally, choice: Choice): number | undefined {
  const { cells, loose, prints } = board;
  const { near } = tally;
  const { place, round, until, spare, draw } = choice;
  const own = cells[place] ?? 0;
  const base = place * prints;
  const harm = near[base + own] ?? 0;
  const reach = board.stride + 1;
  const isResting = (until[place] ?? 0) > round;
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  let alike = 0;
  for (let at = 0; at < loose.length; at += 1) {
    const other = loose[at] ?? 0;
    const print = cells[other] ?? 0;
    if (print === own) continue;
    // As weighSwap does, with what is the same for all partners taken out of the loop.
    const apart = near[other * prints + own] ?? 0;
    const between = other - place;
    const close = between <= reach && between >= -reach ? 2 * harmBetween(board, place, other) : 0;
    const gain =
      (near[base + print] ?? 0) - harm + apart - (near[other * prints + print] ?? 0) - close;
    if (gain > least) continue;
    if ((isResting || (until[other] ?? 0) > round) && spare + gain >= 0) continue;
    alike = gain < least ? 1 : alike + 1;
    least = gain;
    if (alike === 1 || draw(alike) === 0) best = other;
  }
  return best;
}

/** Exchanges the prints of two cells. */
export function swap(board: Board, tally: Tally, one: number, other: number): void {
  const print = board.cells[one] ?? 0;
  relay(board, tally, one, board.cells[other] ?? 0);
  relay(board, tally, other, print);
}

function restore(board: Board, tally: Tally, saved: Int32Array): void {
  for (const place of board.loose) {
    const print = saved[place] ?? 0;
    if (board.cells[place] !== print) relay(board, tally, place, print);
  }
}
