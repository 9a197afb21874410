import type { Board } from './board.ts';
import { evenChains } from './even-chains.ts';
import { evenOut } from './even-out.ts';
import type { Draw } from './start-random.ts';
import { type Tally, tallyBoard } from './tally-board.ts';

/** Exchanges weighed for each loose block in a round, between which chains take their turn. */
const ROUND = 10;

/** Rounds that may pass in which nothing becomes more even. */
const PATIENCE = 3;

/** How prints are spread. */
export interface Spreading {
  /** Exchanges weighed for each loose block. */
  readonly effort: number;
  readonly draw: Draw;
  /** Lightness of each print, where every print has one. */
  readonly values?: readonly number[] | undefined;
}

/**
 * Spreads the prints of a full board evenly over rows and columns without making more blocks touch, by
 * exchanging blocks and, where that is not enough, chains; ends early once every print has within one of
 * its fair share everywhere, unless lights are to be mixed among darks as well.
 */
export function spreadPrints(board: Board, { effort, draw, values }: Spreading): void {
  const tally = tallyBoard(board);
  let least = Number.POSITIVE_INFINITY;
  let idle = 0;
  for (let done = 0; done < effort && board.work.left > 0; done += ROUND) {
    const prints = listUneven(board, tally);
    const squares = sumSquares(tally.rows) + sumSquares(tally.columns);
    idle = squares < least ? 0 : idle + 1;
    least = Math.min(least, squares);
    const isDone = prints.length === 0 || idle > PATIENCE;
    if (isDone && values === undefined) return;
    if (!isDone && done > 0) evenChains(board, tally, { prints, draw });
    evenOut(board, tally, { steps: ROUND * board.loose.length, draw, values });
  }
}

function sumSquares(blocks: Int32Array): number {
  return blocks.reduce((sum, own) => sum + own ** 2, 0);
}

/** Prints that have more than one off their fair share in some row or column. */
function listUneven({ task, prints }: Board, tally: Tally): readonly number[] {
  const { columns, rows } = task.grid;
  const isOff = (print: number, blocks: Int32Array, lines: number) => {
    const share = (task.counts[print] ?? 0) / lines;
    return blocks
      .subarray(print * lines, (print + 1) * lines)
      .some((own) => Math.abs(own - share) > 1);
  };
  const all = Array.from({ length: prints }, (_, print) => print);
  return all.filter(
    (print) => isOff(print, tally.rows, rows) || isOff(print, tally.columns, columns),
  );
}
