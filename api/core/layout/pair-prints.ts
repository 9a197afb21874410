import { type Board, FREE, type LayoutTask, makeBoard } from './board.ts';
import { listLines } from './list-lines.ts';

/** Ways to part four prints into two pairs, the first pair in the first line. */
const PARTINGS = [
  [0, 1, 2, 3],
  [2, 3, 0, 1],
  [0, 2, 1, 3],
  [1, 3, 0, 2],
  [0, 3, 1, 2],
  [1, 2, 0, 3],
] as const;

/** Whether a task is of four prints that may not even meet at corners, which `pairPrints` settles. */
export function isPaired({ grid, counts, touch }: LayoutTask): boolean {
  const isFlat = grid.columns > 1 && grid.rows > 1;
  return touch === 'corners' && isFlat && counts.filter((count) => count > 0).length === 4;
}

/**
 * Four prints free of touching even at corners, on a grid of two rows and columns or more.
 *
 * Every window of two by two then shows all four. If some row shows three unlike in a run, `x y z`,
 * the cell under `y` differs from all three, so it is `w`, and its neighbours are `z` and `x`: the
 * column of `y` takes `y` and `w` in turn, and with it every column takes two in turn. Else every row
 * takes two in turn. So all such layouts are: lines one way, every other line of one pair of prints
 * and the lines between of the other pair, each line beginning with either of its two. An even line
 * holds as many of both; an odd one has one more of the print it begins with. Hence counts and pins
 * can be met by choosing for each line alone which print begins, and trying the twelve ways to part
 * the prints is a proof when none does it.
 *
 * @param task with exactly four prints that have blocks
 * @param turn begins with another of the twelve ways
 * @returns a full board, or nothing where no layout is free of touching
 */
export function pairPrints(task: LayoutTask, turn: number): Board | undefined {
  const used = task.counts.flatMap((count, print) => (count > 0 ? [print] : []));
  const board = makeBoard(task);
  const empty = board.cells.slice();
  const [rows, columns] = [listLines(board, false), listLines(board, true)];
  for (let way = 0; way < 12; way += 1) {
    const at = (way + turn) % 12;
    const [a = 0, b = 0, c = 0, d = 0] = (PARTINGS[at % 6] ?? []).map((index) => used[index] ?? 0);
    const lines = at < 6 ? rows : columns;
    const first = lines.filter((_, index) => index % 2 === 0);
    const second = lines.filter((_, index) => index % 2 === 1);
    board.cells.set(empty);
    if (layPair(board, first, [a, b], turn) && layPair(board, second, [c, d], turn)) return board;
  }
  return undefined;
}

/** Lays two prints in turn along each line so that pins and counts are met, or tells that it cannot. */
function layPair(
  board: Board,
  lines: readonly number[][],
  pair: readonly [number, number],
  turn: number,
): boolean {
  const [a, b] = pair;
  const { counts } = board.task;
  const blocks = lines.reduce((sum, line) => sum + line.length, 0);
  if ((counts[a] ?? 0) + (counts[b] ?? 0) !== blocks) return false;
  const starts = lines.map((line) =>
    [a, b].filter((start) => fits(board, line, [start, a + b - start])),
  );
  if (starts.some((choices) => choices.length === 0)) return false;
  const isOdd = (lines[0]?.length ?? 0) % 2 === 1;
  const even = Math.floor((lines[0]?.length ?? 0) / 2) * lines.length;
  let begun =
    (counts[a] ?? 0) - even - starts.filter((choices) => choices.join() === `${a}`).length;
  if (!isOdd) begun = Math.floor(starts.filter((choices) => choices.length === 2).length / 2);
  if (!isOdd && counts[a] !== even) return false;
  const open = lines.map((_, at) => at).filter((at) => starts[at]?.length === 2);
  if (begun < 0 || begun > open.length) return false;
  const chosen = new Set(open.filter((_, at) => isSpread(at + turn, begun, open.length)));
  for (const [at, line] of lines.entries()) {
    const free = chosen.has(at) ? a : b;
    const start = starts[at]?.length === 2 ? free : (starts[at]?.[0] ?? a);
    for (const [index, place] of line.entries())
      board.cells[place] = index % 2 === 0 ? start : a + b - start;
  }
  return true;
}

/** Whether the place is one of `some` spread evenly over `all`. */
function isSpread(at: number, some: number, all: number): boolean {
  return Math.floor(((at + 1) * some) / all) > Math.floor((at * some) / all);
}

function fits({ cells }: Board, line: readonly number[], prints: readonly number[]): boolean {
  return line.every((place, index) => {
    const pinned = cells[place];
    return pinned === FREE || pinned === prints[index % 2];
  });
}
