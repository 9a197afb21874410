import type { Grid } from '../block/size-quilt.ts';
import type { Touch } from '../contract.ts';
import { letterOf } from './letter-of.ts';

/** What is to be laid: a grid, blocks of each print that fill it, and which meetings count. */
export interface LayoutTask {
  readonly grid: Grid;
  /** Blocks of each print, summing to the cells of the grid. */
  readonly counts: readonly number[];
  /** Whether blocks that meet at a corner only touch too. */
  readonly touch: Touch;
  /** A string a row, a letter a block that must lie there, a full stop where any may. */
  readonly fixed?: readonly string[];
  /** Whole, 0 or more. */
  readonly seed: number;
}

/** Whether any block must lie where it is. */
export function hasPins({ fixed = [] }: Pick<LayoutTask, 'fixed'>): boolean {
  return fixed.some((row) => /[^.]/.test(row));
}

/** A cell that no print lies on. */
export const FREE = -2;
const RIM = -1;

/** Harm of one touching pair: of two layouts with as many pairs, the one with fewer at sides is better. */
export const PAIR = 10_000;

/**
 * The quilt as the search sees it: cells in one array with a rim of one cell about them, so that
 * every neighbour of a cell is a fixed distance away in it.
 */
export interface Board {
  readonly task: LayoutTask;
  /** Steps left, a step being about one cell looked at; whoever searches counts down and ends at nought. */
  readonly work: { left: number };
  readonly prints: number;
  /** Length of one row with its rim. */
  readonly stride: number;
  /** Print of each cell, 0 the first; written over as the search goes. */
  readonly cells: Int32Array;
  /** Row and column of each cell, from 0. */
  readonly row: Int32Array;
  readonly column: Int32Array;
  /** Every cell of the quilt, row by row. */
  readonly places: Int32Array;
  /** Those that are not pinned. */
  readonly loose: Int32Array;
  /** Distances to the cells that touch a cell. */
  readonly near: readonly number[];
  /** Harm of touching over each of those distances: that of a pair, a trifle more at a side. */
  readonly harm: readonly number[];
}

/**
 * An empty board with its pinned blocks on it.
 *
 * @param steps what may be spent on it
 */
export function makeBoard(task: LayoutTask, steps = Number.POSITIVE_INFINITY): Board {
  const { columns, rows } = task.grid;
  const stride = columns + 2;
  const cells = new Int32Array(stride * (rows + 2)).fill(RIM);
  const row = cells.map((_, place) => Math.floor(place / stride) - 1);
  const column = cells.map((_, place) => (place % stride) - 1);
  const places = Int32Array.from({ length: columns * rows }, (_, index) => {
    return (Math.floor(index / columns) + 1) * stride + (index % columns) + 1;
  });
  for (const [index, place] of places.entries()) {
    const letter = task.fixed?.[Math.floor(index / columns)]?.charCodeAt(index % columns) ?? 46;
    cells[place] = letter === 46 ? FREE : letter - 65;
  }
  const loose = places.filter((place) => cells[place] === FREE);
  const sides = [1, -1, stride, -stride];
  const corners = [stride + 1, stride - 1, -stride + 1, -stride - 1];
  const near = task.touch === 'corners' ? [...sides, ...corners] : sides;
  const harm = near.map((_, at) => (at < 4 ? PAIR + 1 : PAIR));
  return {
    task,
    work: { left: steps },
    prints: task.counts.length,
    stride,
    cells,
    row,
    column,
    places,
    loose,
    near,
    harm,
  };
}

/** Lays letters on a board as they stand. */
export function layOn({ cells, places }: Board, letters: readonly string[]): void {
  const text = letters.join('');
  for (const [index, place] of places.entries()) cells[place] = text.charCodeAt(index) - 65;
}

/** Harm of all touching pairs of a board: their number times `PAIR`, and those at sides. */
export function weighHarm({ cells, places, near, harm }: Board): number {
  let sum = 0;
  for (let index = 0; index < places.length; index += 1) {
    const place = places[index] ?? 0;
    const print = cells[place] ?? RIM;
    if (print < 0) continue;
    for (let at = 0; at < near.length; at += 1) {
      if (cells[place + (near[at] ?? 0)] === print) sum += harm[at] ?? 0;
    }
  }
  return sum / 2;
}

/** Blocks of each print that are still to lay. */
export function countLeft({ task, cells, places }: Board): number[] {
  const left = [...task.counts];
  for (const place of places) {
    const print = cells[place] ?? FREE;
    if (print >= 0) left[print] = (left[print] ?? 0) - 1;
  }
  return left;
}

/** The board in letters, a string a row. */
export function writeBoard({ task, cells, stride }: Board): readonly string[] {
  return Array.from({ length: task.grid.rows }, (_, row) => {
    const start = (row + 1) * stride + 1;
    return Array.from({ length: task.grid.columns }, (_, column) => {
      const print = cells[start + column] ?? FREE;
      return print < 0 ? '.' : letterOf(print);
    }).join('');
  });
}
