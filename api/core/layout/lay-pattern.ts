import type { LayoutPattern } from '../contract.ts';
import { type Board, countLeft, FREE, type LayoutTask, makeBoard, writeBoard } from './board.ts';
import { mendCounts } from './mend-counts.ts';
import { spacePrints } from './space-prints.ts';
import { tallyBoard } from './tally-board.ts';

/**
 * Lays prints in a pattern as nearly as their counts and pins allow; single blocks are changed where
 * they harm least until the counts are met.
 *
 * `checkerboard`: dark and light squares of a chessboard, prints shared out to the two by value (by
 * their order where they have none). `diagonal`: bands from the top right down to the left; where
 * corners count, two cells down for one across, so that a band does not meet itself at corners.
 * `rings`: rounds about the middle, set on their points, so that a round meets itself at corners only.
 *
 * @param values lightness of each print, where every print has one
 */
export function layPattern(
  task: LayoutTask,
  pattern: Exclude<LayoutPattern, 'scattered'>,
  values?: readonly number[],
): readonly string[] {
  const board = makeBoard(task);
  const order = rankPrints(task, values);
  const lay = { checkerboard: layChecks, diagonal: layDiagonals, rings: layRings }[pattern];
  lay(board, order);
  mendCounts(board, tallyBoard(board));
  return writeBoard(board);
}

/** Prints that have blocks, dark to light; turned by the seed where they have no value. */
function rankPrints(
  { counts, seed }: LayoutTask,
  values: readonly number[] | undefined,
): readonly number[] {
  const used = counts.flatMap((count, print) => (count > 0 ? [print] : []));
  const turn = seed % used.length;
  const turned = [...used.slice(turn), ...used.slice(0, turn)];
  if (values === undefined) return turned;
  return turned.sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0));
}

function layDiagonals(board: Board, order: readonly number[]): void {
  const { grid, counts, touch } = board.task;
  const down = touch === 'corners' ? 2 : 1;
  const weights = order.map((print) => counts[print] ?? 0);
  const bands = spacePrints(weights, grid.columns + down * grid.rows);
  for (const place of board.loose) {
    const band = (board.column[place] ?? 0) + down * (board.row[place] ?? 0);
    board.cells[place] = order[bands[band] ?? 0] ?? 0;
  }
}

/** From the outside in, each round of the print that has most left after another than the last. */
function layRings(board: Board, order: readonly number[]): void {
  const { columns, rows } = board.task.grid;
  const roundOf = (place: number) =>
    Math.abs((board.row[place] ?? 0) - (rows - 1) / 2) +
    Math.abs((board.column[place] ?? 0) - (columns - 1) / 2);
  const left = countLeft(board);
  const choose = (last: number | undefined) => {
    const others = order.filter((print) => (left[print] ?? 0) > 0 && print !== last);
    return others.toSorted((one, other) => (left[other] ?? 0) - (left[one] ?? 0))[0] ?? last ?? 0;
  };
  let print: number | undefined;
  let round = -1;
  for (const place of [...board.loose].sort((one, other) => roundOf(other) - roundOf(one))) {
    if (print === undefined || roundOf(place) !== round) print = choose(print);
    else if ((left[print] ?? 0) === 0) print = choose(undefined);
    round = roundOf(place);
    board.cells[place] = print;
    left[print] = (left[print] ?? 0) - 1;
  }
}

/** The darker prints fill the squares of one colour, the lighter the others, in turn. */
function layChecks(board: Board, order: readonly number[]): void {
  const { counts } = board.task;
  const blocks = order.flatMap((print) => Array.from({ length: counts[print] ?? 0 }, () => print));
  const dark = board.places.filter((place) => isDark(board, place));
  const halves = [blocks.slice(0, dark.length), blocks.slice(dark.length)];
  const next = [0, 0];
  const turns = halves.map((half) => takeTurns(half));
  for (const place of board.places) {
    const half = isDark(board, place) ? 0 : 1;
    const at = next[half] ?? 0;
    next[half] = at + 1;
    if (board.cells[place] === FREE) board.cells[place] = turns[half]?.[at] ?? 0;
  }
}

function isDark({ row, column }: Board, place: number): boolean {
  return ((row[place] ?? 0) + (column[place] ?? 0)) % 2 === 0;
}

/** The same blocks, each print spaced evenly among the others. */
function takeTurns(blocks: readonly number[]): readonly number[] {
  const prints = [...new Set(blocks)];
  const weights = prints.map((print) => blocks.filter((block) => block === print).length);
  return spacePrints(weights, blocks.length).map((at) => prints[at] ?? 0);
}
