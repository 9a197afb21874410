import type { Board } from './board.ts';
import { listLines } from './list-lines.ts';

/** Cells of which no two touch, in the order in which they are filled. */
export type Strand = readonly number[];

/** How strands are to be filled. */
export interface Filling {
  /** The prints in the order in which they will be laid. */
  readonly order: readonly number[];
  /** Each print in a strand of its own as far as it fits, not one after another. */
  readonly isPacked: boolean;
}

/**
 * Parts a board into strands: four where corners count (every other line, and in each line every
 * other cell), two where only sides do (the colours of a chessboard). Prints laid one after another
 * along them touch their like only where one runs over from one strand into the next.
 *
 * Of lines with an odd number of cells, one half is larger: it goes to the second strand of their two
 * in as many lines as let a print end where a strand ends, or as suit the two prints to be packed there.
 */
export function listStrands(
  board: Board,
  areColumns: boolean,
  { order, isPacked }: Filling,
): readonly Strand[] {
  const lines = listLines(board, areColumns);
  const swaps = chooseSwaps(board, areColumns, { order, isPacked });
  if (board.task.touch === 'sides') {
    return [0, 1].map((colour) =>
      lines.flatMap((line, at) => line.filter((_, index) => (index + at) % 2 === colour)),
    );
  }
  return [0, 1].flatMap((parity) => {
    const own = lines.filter((_, at) => at % 2 === parity);
    const swapped = swaps[parity] ?? 0;
    return [0, 1].map((half) =>
      own.flatMap((line, at) =>
        line.filter((_, index) => index % 2 === (at < own.length - swapped ? half : 1 - half)),
      ),
    );
  });
}

/** For each pair of strands, in how many lines the second gets the larger half. */
function chooseSwaps(
  { task }: Board,
  areColumns: boolean,
  { order, isPacked }: Filling,
): readonly [number, number] {
  const { columns, rows } = task.grid;
  const [many, long] = areColumns ? [columns, rows] : [rows, columns];
  if (long % 2 === 0) return [0, 0];
  const ends: number[] = [];
  let end = 0;
  for (const print of order) {
    end += task.counts[print] ?? 0;
    ends.push(end);
  }
  const find = (own: number, before: number, pair: readonly number[]) => {
    const longest = before + own * Math.ceil(long / 2);
    const exact = ends.map((place) => longest - place).find((swaps) => swaps >= 0 && swaps <= own);
    const [one = 0, other = 0] = pair.map((print) => task.counts[print] ?? 0);
    const even = Math.round(own * Math.ceil(long / 2) - (own * long + one - other) / 2);
    return (isPacked ? undefined : exact) ?? Math.max(0, Math.min(own, even));
  };
  const first = Math.ceil(many / 2);
  return [find(first, 0, order.slice(0, 2)), find(many - first, first * long, order.slice(2, 4))];
}
