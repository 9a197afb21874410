import { type Board, countLeft, FREE } from './board.ts';
import type { Draw } from './start-random.ts';

/**
 * Deals prints over the free cells, row by row: each cell takes, among the prints that touch none of
 * their like there, the one that lags most behind its fair share so far and in its column, with a
 * little chance. Where no print with blocks left is free of touching, one without blocks left may be
 * taken: the counts are put right afterwards.
 *
 * @param board its free cells are filled
 */
export function dealPrints(board: Board, draw: Draw): void {
  const { cells, places, prints, stride, task } = board;
  const { columns, rows } = task.grid;
  const left = countLeft(board);
  board.work.left -= 4 * places.length * prints;
  const inColumn = new Int32Array(prints * columns);
  for (let index = 0; index < places.length; index += 1) {
    const place = places[index] ?? 0;
    const column = (place % stride) - 1;
    const share = (index + 1) / places.length;
    const down = (Math.floor(index / columns) + 1) / (rows * columns);
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    if (cells[place] === FREE) {
      for (let print = 0; print < prints; print += 1) {
        const count = task.counts[print] ?? 0;
        if (count === 0) continue;
        const remains = left[print] ?? 0;
        const lag = remains - count * (1 - share);
        const lagBelow = count * down - (inColumn[print * columns + column] ?? 0);
        const alike = countAlike(board, place, print);
        const harm = alike * 1000 + (remains <= 0 ? 300 - remains : 0);
        const worth = lag + lagBelow + draw(1000) / 1500 - harm;
        if (worth > most) {
          most = worth;
          best = print;
        }
      }
      cells[place] = best;
      left[best] = (left[best] ?? 0) - 1;
    } else best = cells[place] ?? 0;
    inColumn[best * columns + column] = (inColumn[best * columns + column] ?? 0) + 1;
  }
}

function countAlike({ cells, near }: Board, place: number, print: number): number {
  let alike = 0;
  for (let at = 0; at < near.length; at += 1) {
    if (cells[place + (near[at] ?? 0)] === print) alike += 1;
  }
  return alike;
}
