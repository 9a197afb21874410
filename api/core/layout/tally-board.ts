import type { Board } from './board.ts';

/** What a search asks of a board over and over, kept up to date block by block. */
export interface Tally {
  /** For cell and print, at `cell · prints + print`: harm of laying that print there. */
  readonly near: Int32Array;
  /** For print and row, at `print · rows + row`: blocks of the print in the row. */
  readonly rows: Int32Array;
  /** For print and column likewise. */
  readonly columns: Int32Array;
}

/** Counts neighbours, rows and columns of a full board. */
export function tallyBoard(board: Board): Tally {
  const { prints, cells, places, near, harm } = board;
  const { columns, rows } = board.task.grid;
  const tally: Tally = {
    near: new Int32Array(cells.length * prints),
    rows: new Int32Array(prints * rows),
    columns: new Int32Array(prints * columns),
  };
  for (let index = 0; index < places.length; index += 1) {
    const place = places[index] ?? 0;
    const print = cells[place] ?? 0;
    const row = board.row[place] ?? 0;
    const column = board.column[place] ?? 0;
    bump(tally.rows, print * rows + row, 1);
    bump(tally.columns, print * columns + column, 1);
    for (let at = 0; at < near.length; at += 1) {
      bump(tally.near, (place + (near[at] ?? 0)) * prints + print, harm[at] ?? 0);
    }
  }
  return tally;
}

/** Lays another print on a cell and keeps the tally true. */
export function relay(board: Board, tally: Tally, place: number, print: number): void {
  const { prints, cells, near, harm } = board;
  const { columns, rows } = board.task.grid;
  const old = cells[place] ?? 0;
  const row = board.row[place] ?? 0;
  const column = board.column[place] ?? 0;
  cells[place] = print;
  bump(tally.rows, old * rows + row, -1);
  bump(tally.rows, print * rows + row, 1);
  bump(tally.columns, old * columns + column, -1);
  bump(tally.columns, print * columns + column, 1);
  const { near: sums } = tally;
  for (let at = 0; at < near.length; at += 1) {
    const base = (place + (near[at] ?? 0)) * prints;
    const own = harm[at] ?? 0;
    sums[base + old] = (sums[base + old] ?? 0) - own;
    sums[base + print] = (sums[base + print] ?? 0) + own;
  }
}

/** By how much the harm grows when two cells change places. */
export function weighSwap(board: Board, tally: Tally, one: number, other: number): number {
  const { prints, cells } = board;
  const a = cells[one] ?? 0;
  const b = cells[other] ?? 0;
  const gain =
    (tally.near[one * prints + b] ?? 0) -
    (tally.near[one * prints + a] ?? 0) +
    (tally.near[other * prints + a] ?? 0) -
    (tally.near[other * prints + b] ?? 0);
  return gain - 2 * harmBetween(board, one, other);
}

/** Harm of two cells showing one print: none where they do not touch. */
export function harmBetween({ near, harm, stride }: Board, one: number, other: number): number {
  const apart = other - one;
  // Most cells are too far apart to touch, and that is quickly seen.
  if (apart > stride + 1 || apart < -stride - 1) return 0;
  const at = near.indexOf(apart);
  return at < 0 ? 0 : (harm[at] ?? 0);
}

function bump(array: Int32Array, index: number, by: number): void {
  array[index] = (array[index] ?? 0) + by;
}
