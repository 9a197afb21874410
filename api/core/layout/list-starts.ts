import { balanceCounts } from './balance-counts.ts';
import type { Board } from './board.ts';
import { mostApart } from './can-lay.ts';
import { dealPrints } from './deal-prints.ts';
import { fillStrands } from './fill-strands.ts';
import { followPins } from './follow-pins.ts';
import { layBricks } from './lay-bricks.ts';
import { packStrands } from './pack-strands.ts';
import { repeatPrints } from './repeat-prints.ts';
import type { Draw } from './start-random.ts';

/** Fills the free cells of a board. */
export type Start = (board: Board) => void;

/** Orders drawn by chance for strands, when nothing simpler served. */
const CHANCES = 12;

/** Part of the cells that one print can take apart, beyond which there is no room to deal. */
const CROWDED = 0.95;

/**
 * Ways to begin a layout, the most even first: with a print more than a layout free of touching needs,
 * dealing finds one nearly always; with no print to spare, a plain repeat where the counts fit it; then
 * strands, which meet unequal counts but leave prints in bands.
 */
export function* listStarts({ task }: Board, draw: Draw): Generator<Start> {
  const { grid, counts, touch } = task;
  const used = counts.flatMap((count, print) => (count > 0 ? [print] : []));
  const order = used.toSorted((one, other) => (counts[other] ?? 0) - (counts[one] ?? 0));
  const [first = 0, ...rest] = order;
  // With a print that nearly must touch itself, dealing is the worst way, and strands keep it apart.
  const isCrowded = (counts[first] ?? 0) > CROWDED * mostApart(grid, touch);
  const needed = touch === 'corners' ? 5 : 3;
  const deal: Start = (board) => {
    dealPrints(board, draw);
    balanceCounts(board, draw);
  };
  if (used.length > needed && !isCrowded) yield* [deal, deal];
  if (used.length >= needed && !isCrowded) {
    for (const shift of [2, 3])
      yield (board) => repeatPrints(board, followPins(board, order, shift), shift);
  }
  if (used.length === needed && !isCrowded) yield deal;
  if (used.length === 3 && touch === 'corners') yield (board) => layBricks(board, order);
  for (const areColumns of [false, true]) {
    yield (board) => fillStrands(board, areColumns, order);
    yield (board) => packStrands(board, areColumns, order);
    yield (board) => fillStrands(board, areColumns, [first, ...rest.toReversed()]);
  }
  for (let chance = 0; chance < CHANCES; chance += 1) {
    const drawn = shuffle(used, draw);
    yield (board) => fillStrands(board, chance % 2 === 0, drawn);
    yield (board) => packStrands(board, chance % 2 === 0, drawn);
  }
  if (isCrowded) {
    for (const shift of [2, 3])
      yield (board) => repeatPrints(board, followPins(board, order, shift), shift);
    yield deal;
  }
  yield (board) => dealPrints(board, draw);
}

function shuffle(prints: readonly number[], draw: Draw): readonly number[] {
  const rest = [...prints];
  return prints.map(() => rest.splice(draw(rest.length), 1)[0] ?? 0);
}
