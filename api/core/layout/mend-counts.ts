import { type Board, countLeft } from './board.ts';
import { relay, type Tally } from './tally-board.ts';

/**
 * Makes the counts of a full board those wanted, one block at a time where it hurts least: among the
 * loose cells whose print is too many, the one that touches fewest of the print that is too few.
 */
export function mendCounts(board: Board, tally: Tally): void {
  const left = Int32Array.from(countLeft(board));
  for (let print = 0; print < board.prints; print += 1) {
    while ((left[print] ?? 0) > 0) {
      const place = leastHarm(board, tally, left, print);
      if (place === undefined) return;
      const old = board.cells[place] ?? 0;
      relay(board, tally, place, print);
      left[old] = (left[old] ?? 0) + 1;
      left[print] = (left[print] ?? 0) - 1;
    }
  }
}

function leastHarm(
  { cells, loose, prints }: Board,
  tally: Tally,
  left: Int32Array,
  print: number,
): number | undefined {
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < loose.length; at += 1) {
    const place = loose[at] ?? 0;
    const old = cells[place] ?? 0;
    if ((left[old] ?? 0) >= 0) continue;
    const harm =
      (tally.near[place * prints + print] ?? 0) - (tally.near[place * prints + old] ?? 0);
    if (harm < least) {
      least = harm;
      best = place;
    }
  }
  return best;
}
