import fc from 'fast-check';
import { type Board, type LayoutTask, makeBoard } from '#core/layout/board.ts';
import { dealPrints } from '#core/layout/deal-prints.ts';
import { mendCounts } from '#core/layout/mend-counts.ts';
import { type Draw, startRandom } from '#core/layout/start-random.ts';
import { tallyBoard } from '#core/layout/tally-board.ts';
import { anyLayout } from './layouts.ts';

/** Any small layout to be found, some of its blocks pinned where they could lie. */
export function anyTask(most = 9, pinned = true): fc.Arbitrary<LayoutTask> {
  return fc
    .record({
      layout: anyLayout(most),
      touch: fc.constantFrom('corners' as const, 'sides' as const),
      seed: fc.nat({ max: 99 }),
      pins: pinned ? fc.nat({ max: 100 }) : fc.constant(0),
    })
    .map(({ layout, touch, seed, pins }) => {
      const task = { ...layout, touch, seed };
      if (pins < 50) return task;
      const draw = startRandom(seed);
      const cells = lettersOf(fillBoard(makeBoard(task), draw));
      const fixed = cells.map((row) =>
        row.replace(/./g, (letter) => (draw(4) === 0 ? letter : '.')),
      );
      return { ...task, fixed };
    });
}

/** Deals a board and puts its counts right. */
export function fillBoard(board: Board, draw: Draw): Board {
  dealPrints(board, draw);
  mendCounts(board, tallyBoard(board));
  return board;
}

/** The board in letters, read without the help of the core. */
export function lettersOf({ task, cells, places }: Board): readonly string[] {
  const letters = [...places].map((place) => String.fromCharCode(65 + (cells[place] ?? 0)));
  const { columns, rows } = task.grid;
  return Array.from({ length: rows }, (_, row) =>
    letters.slice(row * columns, (row + 1) * columns).join(''),
  );
}

/** Whether every pinned block lies where it must. */
export function keepsPins(cells: readonly string[], fixed: readonly string[] = []): boolean {
  return fixed.every((row, at) =>
    [...row].every((pin, column) => pin === '.' || cells[at]?.[column] === pin),
  );
}

/** Touching pairs that count, by looking at every neighbour of every cell. */
export function countTouch(cells: readonly string[], touch: 'corners' | 'sides'): number {
  const steps = [-1, 0, 1].flatMap((down) => [-1, 0, 1].map((across) => [down, across] as const));
  const near = steps.filter(([down, across]) => {
    const far = Math.abs(down) + Math.abs(across);
    return far === 1 || (far === 2 && touch === 'corners');
  });
  const found = cells.flatMap((row, at) =>
    [...row].map(
      (print, column) =>
        near.filter(([down, across]) => cells[at + down]?.[column + across] === print).length,
    ),
  );
  return found.reduce((sum, alike) => sum + alike, 0) / 2;
}

/** Sum over prints of squared blocks a row and a column. */
export function unevenness(cells: readonly string[]): number {
  const columns = [...(cells[0] ?? '')].map((_, at) => cells.map((row) => row[at]).join(''));
  return [...cells, ...columns]
    .flatMap((line) => [...new Set(line)].map((print) => (line.split(print).length - 1) ** 2))
    .reduce((sum, square) => sum + square, 0);
}
