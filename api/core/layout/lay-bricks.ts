import { type Board, FREE } from './board.ts';

/**
 * Lays three prints or fewer in bricks of two over the free cells, each column of bricks moved by half
 * a brick and one print against the one before: three prints then touch in every window of two by two
 * once only, and each touching side serves two windows.
 *
 * @param order the prints that have blocks, each once
 */
export function layBricks(board: Board, order: readonly number[]): void {
  const { cells, places, stride } = board;
  for (const place of places) {
    if (cells[place] !== FREE) continue;
    const row = Math.floor(place / stride) - 1;
    const odd = ((place % stride) - 1) % 2;
    cells[place] = order[(Math.floor((row + odd) / 2) + odd) % order.length] ?? 0;
  }
}
