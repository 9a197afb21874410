import { type Board, countLeft } from './board.ts';
import { relay, type Tally } from './tally-board.ts';

/**
 * Makes the counts of a full board those wanted, one block at a time where it hurts least: among the
 * loose cells whose print is too many, the one that touches fewest of the print that is too few.
 *
 * As a print is laid, what it harms to lay it elsewhere grows or stays. So the least harm never falls,
 * and a sweep that found it goes on from there until no other cell has it.
 */
export function mendCounts(board: Board, tally: Tally): void {
  const left = Int32Array.from(countLeft(board));
  for (let print = 0; print < board.prints; print += 1) {
    if ((left[print] ?? 0) > 0) layMore(board, tally, left, print);
  }
}

/** Lays one print on as many cells as lack it. */
function layMore(board: Board, tally: Tally, left: Int32Array, print: number): void {
  const { cells, loose } = board;
  for (
    let least = leastHarm(board, tally, left, print);
    (left[print] ?? 0) > 0 && least < Number.POSITIVE_INFINITY;
    least = leastHarm(board, tally, left, print)
  ) {
    board.work.left -= 2 * loose.length;
    for (let at = 0; at < loose.length && (left[print] ?? 0) > 0; at += 1) {
      const place = loose[at] ?? 0;
      const old = cells[place] ?? 0;
      if ((left[old] ?? 0) >= 0 || weighChange(board, tally, place, print) > least) continue;
      relay(board, tally, place, print);
      left[old] = (left[old] ?? 0) + 1;
      left[print] = (left[print] ?? 0) - 1;
    }
  }
}

/** The least that one more block of a print harms, where it takes the place of one that is too many. */
function leastHarm(board: Board, tally: Tally, left: Int32Array, print: number): number {
  const { cells, loose } = board;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < loose.length; at += 1) {
    const place = loose[at] ?? 0;
    if ((left[cells[place] ?? 0] ?? 0) >= 0) continue;
    const harm = weighChange(board, tally, place, print);
    if (harm < least) least = harm;
  }
  return least;
}

function weighChange(
  { cells, prints }: Board,
  { near }: Tally,
  place: number,
  print: number,
): number {
  return (near[place * prints + print] ?? 0) - (near[place * prints + (cells[place] ?? 0)] ?? 0);
}
