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
  const { cells, loose, task } = board;
  const isLoose = new Uint8Array(cells.length);
  for (let at = 0; at < loose.length; at += 1) isLoose[loose[at] ?? 0] = 1;
  const seen = new Uint8Array(cells.length);
  const more = new Int32Array(task.grid.rows + task.grid.columns);
  const chains: Chain[] = [];
  for (let at = 0; at < loose.length; at += 1) {
    const place = loose[at] ?? 0;
    const print = cells[place];
    if (seen[place] === 1 || (print !== one && print !== other)) continue;
    const chain = followChain(board, place, print === one ? other : one, seen);
    if (!isAll(chain, isLoose)) continue;
    chains.push(measureChain(board, { cells: chain, one }, more));
  }
  return chains;
}

function isAll(chain: readonly number[], marks: Uint8Array): boolean {
  for (const cell of chain) if (marks[cell] !== 1) return false;
  return true;
}

/** @param more nought in every line, before and after */
function measureChain(
  { cells: prints, row, column, task }: Board,
  { cells, one }: { readonly cells: readonly number[]; readonly one: number },
  more: Int32Array,
): Chain {
  const { rows } = task.grid;
  let surplus = 0;
  for (const cell of cells) {
    const own = prints[cell] === one ? 1 : -1;
    const across = row[cell] ?? 0;
    const down = rows + (column[cell] ?? 0);
    surplus += own;
    more[across] = (more[across] ?? 0) + own;
    more[down] = (more[down] ?? 0) + own;
  }
  const lines: number[] = [];
  const tell = (line: number) => {
    const sum = more[line] ?? 0;
    if (sum !== 0) lines.push(line, sum);
    more[line] = 0;
  };
  for (const cell of cells) {
    tell(row[cell] ?? 0);
    tell(rows + (column[cell] ?? 0));
  }
  return { cells, surplus, lines: Int32Array.from(lines) };
}
