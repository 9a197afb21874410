import { type Board, countLeft, FREE } from './board.ts';
import { listStrands } from './list-strands.ts';

/**
 * Fills a board along its strands, the prints one after another in the order given.
 *
 * @param order every print once
 */
export function fillStrands(board: Board, areColumns: boolean, order: readonly number[]): void {
  const left = countLeft(board);
  const places = listStrands(board, areColumns, { order, isPacked: false }).flat();
  let at = 0;
  for (const place of places) {
    if (board.cells[place] !== FREE) continue;
    while (at < order.length - 1 && (left[order[at] ?? 0] ?? 0) <= 0) at += 1;
    const print = order[at] ?? 0;
    board.cells[place] = print;
    left[print] = (left[print] ?? 0) - 1;
  }
}
