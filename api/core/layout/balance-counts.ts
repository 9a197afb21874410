import { type Board, countLeft } from './board.ts';
import { followChain } from './follow-chain.ts';
import type { Draw } from './start-random.ts';

/** Moves that may pass before counts must be right. */
const MOST_MOVES = 400;

/**
 * Brings the counts of a full board nearer to those wanted without making more blocks touch: a chain
 * of two prints (a Kempe chain: all cells of the two that hang together by touching) changes its
 * prints as a whole, which moves blocks from the print with more cells in it to the other.
 *
 * @param board full; no chain that holds a pinned cell is changed
 */
export function balanceCounts(board: Board, draw: Draw): void {
  const left = countLeft(board);
  const isLoose = new Uint8Array(board.cells.length);
  for (const place of board.loose) isLoose[place] = 1;
  let least = sumOff(left);
  let best = board.cells.slice();
  for (let move = 0; move < MOST_MOVES && least > 0 && board.work.left > 0; move += 1) {
    const exchange = chooseExchange(board, left, { isDetour: move % 3 === 2, draw });
    if (exchange === undefined) continue;
    const { from, to } = exchange;
    const surplus = swapChain(board, { ...exchange, isLoose }, draw);
    left[from] = (left[from] ?? 0) + surplus;
    left[to] = (left[to] ?? 0) - surplus;
    if (sumOff(left) >= least) continue;
    least = sumOff(left);
    best = board.cells.slice();
  }
  board.cells.set(best);
}

function sumOff(left: readonly number[]): number {
  return left.reduce((sum, lack) => sum + Math.abs(lack), 0);
}

/** From a print that has too many to one that has too few; on a detour one of the two by chance. */
function chooseExchange(
  { prints, task }: Board,
  left: readonly number[],
  { isDetour, draw }: { readonly isDetour: boolean; readonly draw: Draw },
): Omit<Exchange, 'isLoose'> | undefined {
  const over = pick(left, draw, (lack) => lack < 0) ?? 0;
  const under = pick(left, draw, (lack) => lack > 0) ?? 0;
  const from = isDetour && draw(2) === 0 ? draw(prints) : over;
  const to = isDetour && from === over ? draw(prints) : under;
  if (from === to || task.counts[to] === 0 || task.counts[from] === 0) return undefined;
  const wanted = Math.max(1, Math.min(-(left[over] ?? 0), left[under] ?? 0));
  return { from, to, most: isDetour ? 2 : wanted };
}

function pick(left: readonly number[], draw: Draw, fits: (lack: number) => boolean) {
  const some = left.flatMap((lack, print) => (fits(lack) ? [print] : []));
  return some[draw(some.length)];
}

interface Exchange {
  readonly from: number;
  readonly to: number;
  /** Blocks that may change sides. */
  readonly most: number;
  readonly isLoose: Uint8Array;
}

/** Exchanges one chain with more of `from` than of `to`, by at most `most`; tells by how many. */
function swapChain(board: Board, exchange: Exchange, draw: Draw): number {
  const { cells, loose } = board;
  const { from, to, most, isLoose } = exchange;
  const seen = new Uint8Array(cells.length);
  const start = draw(loose.length);
  board.work.left -= cells.length / 8;
  for (let at = 0; at < loose.length; at += 1) {
    board.work.left -= 0.25;
    const turn = start + at;
    const place = loose[turn < loose.length ? turn : turn - loose.length] ?? 0;
    if (cells[place] !== from || seen[place] === 1) continue;
    const chain = followChain(board, place, to, seen);
    board.work.left -= 4 * chain.length;
    let surplus = 0;
    let isWhole = true;
    for (const cell of chain) {
      surplus += cells[cell] === from ? 1 : -1;
      isWhole &&= isLoose[cell] === 1;
    }
    if (!isWhole || surplus < 1 || surplus > most) continue;
    for (const cell of chain) cells[cell] = cells[cell] === from ? to : from;
    return surplus;
  }
  return 0;
}
