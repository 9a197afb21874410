import { FREE, hasPins, type LayoutTask, makeBoard, writeBoard } from './board.ts';
import { boundTouching } from './bound-touching.ts';
import { listLines } from './list-lines.ts';
import { startTable } from './start-table.ts';

/** What an exact search came to. */
export interface Searched {
  /** No layout has fewer touching pairs. */
  readonly fewest: number;
  /** A layout with exactly so many, where the search got so far. */
  readonly cells?: readonly string[];
  /** Blocks laid. */
  readonly spent: number;
}

/** Prints and counts beyond this cannot be told apart by one number. */
const MOST_STATES = 2 ** 52;

/**
 * The fewest touching pairs by exact search: cell by cell along the longer side, every print that may
 * lie there, given up where the pairs so far are too many or the same frontier with the same blocks
 * left was found hopeless before; first with `least` pairs allowed, then with one more at a time.
 *
 * @param range `least` is a proven bound to begin with; beyond `most` nobody wants to know
 * @param steps blocks laid in all at most: where they run out, what was proven so far is told
 */
export function searchFewest(
  task: LayoutTask,
  range: { readonly least: number; readonly most: number },
  steps: number,
): Searched {
  const search = startSearch(task, steps);
  if (search === undefined) return { fewest: range.least, spent: 0 };
  let spent = 0;
  for (let allowed = range.least; allowed <= range.most; allowed += 1) {
    const found = search(allowed);
    if (found === 'spent') return { fewest: allowed, spent: steps };
    spent = found.spent;
    if (found.cells !== undefined) return { fewest: allowed, ...found };
  }
  return { fewest: range.most + 1, spent };
}

type Search = (allowed: number) => Omit<Searched, 'fewest'> | 'spent';

function startSearch(task: LayoutTask, steps: number): Search | undefined {
  const board = makeBoard(task);
  const { cells, prints } = board;
  const near = Int32Array.from(board.near);
  const areColumns = task.grid.columns > task.grid.rows;
  const order = Int32Array.from(listLines(board, areColumns).flat());
  const cellsInAll = order.length;
  const breadth = Math.min(task.grid.columns, task.grid.rows);
  // One number tells the prints of the frontier, the next the blocks left: a digit for each.
  const beyond = prints ** (breadth + 1);
  const weights = task.counts.map(() => 1);
  let states = 1;
  for (const [print, count] of task.counts.entries()) {
    weights[print] = states;
    states *= count + 1;
  }
  if (states * beyond > MOST_STATES) return undefined;
  const pins = order.map((place) => cells[place] ?? FREE);
  for (const place of order) cells[place] = FREE;
  const twin = findTwins(task);
  const hopeless = startTable();
  const left = Int32Array.from(task.counts);
  const grids = Array.from({ length: cellsInAll / breadth }, (_, line) => ({
    ...task,
    grid: { columns: breadth, rows: cellsInAll / breadth - line },
  }));
  let spent = 0;

  /** What the lines not yet begun cannot help among themselves. */
  const boundRest = (at: number) => {
    const rest = at % breadth === 0 ? grids[at / breadth] : undefined;
    return rest === undefined ? 0 : boundTouching({ ...rest, counts: Array.from(left) });
  };

  const descend = (at: number, slack: number, [frontier, blocks]: State): boolean => {
    if (at === cellsInAll) return true;
    const place = order[at] ?? 0;
    // How many blocks are left tells the place as well.
    const state = frontier * states + blocks;
    if (hopeless.find(state) >= slack || boundRest(at) > slack) return false;
    const pin = pins[at] ?? FREE;
    const tail = (frontier % (beyond / prints)) * prints;
    for (let print = 0; print < prints; print += 1) {
      if ((left[print] ?? 0) === 0 || (pin !== FREE && pin !== print)) continue;
      const before = twin[print] ?? -1;
      if (before >= 0 && left[before] === task.counts[before] && left[print] === task.counts[print])
        continue;
      let alike = 0;
      for (let way = 0; way < near.length; way += 1) {
        if (cells[place + (near[way] ?? 0)] === print) alike += 1;
      }
      if (alike > slack) continue;
      spent += 1;
      if (spent > steps) return false;
      cells[place] = print;
      left[print] = (left[print] ?? 0) - 1;
      if (descend(at + 1, slack - alike, [tail + print, blocks - (weights[print] ?? 0)]))
        return true;
      left[print] = (left[print] ?? 0) + 1;
      cells[place] = FREE;
    }
    if (spent <= steps) hopeless.keep(state, slack);
    return false;
  };

  return (allowed) => {
    if (descend(0, allowed, [0, states - 1])) return { cells: writeBoard(board), spent };
    return spent > steps ? 'spent' : { spent };
  };
}

/** The prints of the frontier and the blocks left, each as one number. */
type State = readonly [frontier: number, blocks: number];

/** For each print the one before it with as many blocks, while none is pinned: they are alike. */
function findTwins(task: LayoutTask): readonly number[] {
  const { counts } = task;
  const isPinned = hasPins(task);
  return counts.map((count, print) => (isPinned ? -1 : counts.slice(0, print).lastIndexOf(count)));
}
