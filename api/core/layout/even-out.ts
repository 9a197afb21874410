import type { Board } from './board.ts';
import { swap } from './repair-touching.ts';
import type { Draw } from './start-random.ts';
import { harmBetween, type Tally, weighSwap } from './tally-board.ts';

/** Steps that one exchange weighed is worth. */
const WEIGHED = 3;

/**
 * Spreads the prints of a full board over rows and columns, and lights among darks, without making
 * more blocks touch: exchanges two blocks wherever the sum over prints of squared blocks a row and a
 * column falls, or stays while unlike lightness comes closer together.
 *
 * @param values lightness of each print, where every print has one
 * @param steps exchanges weighed
 */
export function evenOut(
  board: Board,
  tally: Tally,
  how: {
    readonly steps: number;
    readonly draw: Draw;
    readonly values?: readonly number[] | undefined;
  },
): void {
  const { cells, loose } = board;
  const isLoose = new Uint8Array(cells.length);
  for (const place of loose) isLoose[place] = 1;
  board.work.left -= WEIGHED * how.steps;
  for (let step = 0; step < how.steps; step += 1) {
    const at = step % loose.length;
    const sweep = (step - at) / loose.length;
    const one = loose[at] ?? 0;
    const other = pickOther(board, one, (at + sweep) % 3, how.draw);
    if (isLoose[other] !== 1 || cells[one] === cells[other]) continue;
    if (weighSwap(board, tally, one, other) > 0) continue;
    const spread = weighSpread(board, tally, one, other);
    if (spread > 0) continue;
    const isWorse =
      spread === 0 &&
      how.values !== undefined &&
      weighValue(board, tally, [one, other, how.values]) > 0;
    if (!isWorse) swap(board, tally, one, other);
  }
}

/** A cell in the same row, in the same column or anywhere: within a line only the other lines change. */
function pickOther(board: Board, one: number, way: number, draw: Draw): number {
  const { task, row, column, stride } = board;
  const { columns, rows } = task.grid;
  const across = way === 1 ? 0 : draw(columns) - (column[one] ?? 0);
  const down = way === 0 ? 0 : draw(rows) - (row[one] ?? 0);
  return one + across + down * stride;
}

/** By how much the squared blocks a row and a column grow when two cells change places. */
function weighSpread(board: Board, tally: Tally, one: number, other: number): number {
  const { cells } = board;
  const { columns, rows } = board.task.grid;
  const a = cells[one] ?? 0;
  const b = cells[other] ?? 0;
  const [row, lower] = [board.row[one] ?? 0, board.row[other] ?? 0];
  const [column, further] = [board.column[one] ?? 0, board.column[other] ?? 0];
  let growth = 0;
  if (row !== lower) {
    growth +=
      (tally.rows[a * rows + lower] ?? 0) -
      (tally.rows[a * rows + row] ?? 0) +
      (tally.rows[b * rows + row] ?? 0) -
      (tally.rows[b * rows + lower] ?? 0) +
      2;
  }
  if (column !== further) {
    growth +=
      (tally.columns[a * columns + further] ?? 0) -
      (tally.columns[a * columns + column] ?? 0) +
      (tally.columns[b * columns + column] ?? 0) -
      (tally.columns[b * columns + further] ?? 0) +
      2;
  }
  return growth;
}

/** By how much the sum of products of neighbouring values grows. */
function weighValue(
  board: Board,
  tally: Tally,
  [one, other, values]: readonly [number, number, readonly number[]],
): number {
  const { cells, prints } = board;
  const a = values[cells[one] ?? 0] ?? 0;
  const b = values[cells[other] ?? 0] ?? 0;
  let about = 0;
  for (let print = 0; print < prints; print += 1) {
    const more =
      (tally.near[one * prints + print] ?? 0) - (tally.near[other * prints + print] ?? 0);
    about += more * (values[print] ?? 0);
  }
  const between = (b - a) * harmBetween(board, one, other);
  return (b - a) * (about - between);
}
