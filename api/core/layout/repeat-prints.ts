import { type Board, FREE } from './board.ts';

/**
 * Lays prints in a plain repeat over the free cells: cell (row, column) takes place
 * (column + shift·row) mod P of the order. With five prints or more, shifts of 2 and 3 keep like prints
 * apart even at corners and give each row its even share.
 *
 * @param order the prints that have blocks, each once
 * @param shift whole, 0 or more
 */
export function repeatPrints(board: Board, order: readonly number[], shift: number): void {
  const { cells, places, stride } = board;
  for (const place of places) {
    if (cells[place] !== FREE) continue;
    const row = Math.floor(place / stride) - 1;
    const column = (place % stride) - 1;
    cells[place] = order[(column + shift * row) % order.length] ?? 0;
  }
}
