import type { Board } from './board.ts';
import { followChain } from './follow-chain.ts';

/** A chain of two prints, and how many more blocks of the first it has: in all and in each line. */
export interface Chain {
  readonly cells: readonly number[];
  readonly surplus: number;
  /** Each line that it lies in and the surplus there, in turn: rows from 0, columns after them. */
  readonly lines: Int32Array;
}

/** Chains of two prints without a pinned cell. */
export function listChains(board: Board, one: number, other: number): readonly Chain[] {
  const isLoose = new Uint8Array(board.cells.length);
  for (const place of board.loose) isLoose[place] = 1;
  const seen = new Uint8Array(board.cells.length);
  const chains: Chain[] = [];
  for (const place of board.loose) {
    const print = board.cells[place];
    if (seen[place] === 1 || (print !== one && print !== other)) continue;
    const cells = followChain(board, place, print === one ? other : one, seen);
    if (cells.every((cell) => isLoose[cell] === 1)) chains.push(measureChain(board, cells, one));
  }
  return chains;
}

function measureChain(board: Board, cells: readonly number[], one: number): Chain {
  const lines = new Map<number, number>();
  let surplus = 0;
  for (const cell of cells) {
    const own = board.cells[cell] === one ? 1 : -1;
    surplus += own;
    const row = board.row[cell] ?? 0;
    const column = board.task.grid.rows + (board.column[cell] ?? 0);
    lines.set(row, (lines.get(row) ?? 0) + own);
    lines.set(column, (lines.get(column) ?? 0) + own);
  }
  const moving = [...lines].filter(([, more]) => more !== 0);
  return { cells, surplus, lines: Int32Array.from(moving.flat()) };
}
