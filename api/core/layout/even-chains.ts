import type { Board } from './board.ts';
import { type Chain, listChains } from './list-chains.ts';
import type { Draw } from './start-random.ts';
import { relay, type Tally } from './tally-board.ts';

/** Trials for each pair of prints and chain. */
const TRIALS = 12;

/** Steps that one trial is worth, with its part in finding the chain. */
const TRIAL = 5;

/** Steps for each cell to find the chains of two prints, and for each cell that changes its print. */
const LISTED = 4;
const TURNED = 20;

/**
 * Spreads prints where no two blocks can change places any more without touching: takes two prints at a
 * time and exchanges them along whole chains, one by itself or two that make up for each other, so that
 * counts and touching pairs stay, wherever the sum of squared blocks a row and a column does not grow.
 *
 * @param prints those to be spread, each with every other print
 */
export function evenChains(
  board: Board,
  tally: Tally,
  { prints, draw }: { readonly prints: readonly number[]; readonly draw: Draw },
): void {
  for (const one of prints) {
    for (let other = 0; other < board.prints; other += 1) {
      if (one !== other && board.work.left > 0) turnChains(board, tally, { one, other, draw });
    }
  }
}

function turnChains(
  board: Board,
  tally: Tally,
  { one, other, draw }: { readonly one: number; readonly other: number; readonly draw: Draw },
): void {
  const chains = listChains(board, one, other);
  board.work.left -= LISTED * board.cells.length + TRIAL * TRIALS * chains.length;
  // 1 as the chain was found, −1 once it is turned, 0 where a trial leaves it out.
  const ways = new Int32Array(chains.length).fill(1);
  const moved = new Int32Array(board.task.grid.rows + board.task.grid.columns);
  for (let trial = 0; trial < TRIALS * chains.length && board.work.left > 0; trial += 1) {
    const first = draw(chains.length);
    const second = draw(chains.length);
    const [chain, mate] = [chains[first], chains[second]];
    if (chain === undefined || mate === undefined) continue;
    const way = ways[first] ?? 1;
    const mateWay = first === second ? 0 : (ways[second] ?? 1);
    if (way * chain.surplus + mateWay * mate.surplus !== 0) continue;
    board.work.left -= chain.lines.length + mate.lines.length;
    addLines(moved, chain, way);
    addLines(moved, mate, mateWay);
    const pair = { one, other, moved };
    if (weighLines(board, tally, chain, pair) + weighLines(board, tally, mate, pair) > 0) continue;
    for (const at of mateWay === 0 ? [first] : [first, second]) {
      ways[at] = -(ways[at] ?? 1);
      board.work.left -= TURNED * (chains[at]?.cells.length ?? 0);
      for (const cell of chains[at]?.cells ?? []) {
        relay(board, tally, cell, board.cells[cell] === one ? other : one);
      }
    }
  }
}

/** Adds to each line what a chain takes from the first print there when it is turned. */
function addLines(moved: Int32Array, { lines }: Chain, way: number): void {
  for (let at = 0; at < lines.length; at += 2) {
    const line = lines[at] ?? 0;
    moved[line] = (moved[line] ?? 0) + way * (lines[at + 1] ?? 0);
  }
}

interface Turn {
  readonly one: number;
  readonly other: number;
  /** What each line would lose of the first print; set back to nought as it is weighed. */
  readonly moved: Int32Array;
}

/** By how much squared blocks grow (halved) in the lines of a chain. */
function weighLines(board: Board, tally: Tally, { lines }: Chain, turn: Turn): number {
  const { rows, columns } = board.task.grid;
  const { one, other, moved } = turn;
  let growth = 0;
  for (let at = 0; at < lines.length; at += 2) {
    const line = lines[at] ?? 0;
    const more = moved[line] ?? 0;
    moved[line] = 0;
    const gap =
      line < rows
        ? (tally.rows[other * rows + line] ?? 0) - (tally.rows[one * rows + line] ?? 0)
        : (tally.columns[other * columns + line - rows] ?? 0) -
          (tally.columns[one * columns + line - rows] ?? 0);
    growth += more * (gap + more);
  }
  return growth;
}
