import { FREE, type LayoutTask, makeBoard, writeBoard } from './board.ts';
import { boundTouching } from './bound-touching.ts';
import { listLines } from './list-lines.ts';

/** What an exact search came to. */
export interface Searched {
  /** No layout has fewer touching pairs. */
  readonly fewest: number;
  /** A layout with exactly so many, where the search got so far. */
  readonly cells?: readonly string[];
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
  if (search === undefined) return { fewest: range.least };
  for (let allowed = range.least; allowed <= range.most; allowed += 1) {
    const found = search(allowed);
    if (found === 'spent') return { fewest: allowed };
    if (found !== undefined) return { fewest: allowed, cells: found };
  }
  return { fewest: range.most + 1 };
}

type Search = (allowed: number) => readonly string[] | 'spent' | undefined;

function startSearch(task: LayoutTask, steps: number): Search | undefined {
  const board = makeBoard(task);
  const { cells, prints, near } = board;
  const areColumns = task.grid.columns > task.grid.rows;
  const order = listLines(board, areColumns).flat();
  const breadth = Math.min(task.grid.columns, task.grid.rows);
  const bases = task.counts.map((count) => count + 1);
  const states = bases.reduce((all, base) => all * base, prints ** (breadth + 1));
  if (states > MOST_STATES) return undefined;
  const pins = order.map((place) => cells[place] ?? FREE);
  for (const place of order) cells[place] = FREE;
  const twin = findTwins(task);
  const hopeless = order.map(() => new Map<number, number>());
  const left = [...task.counts];
  let spent = 0;

  const key = (at: number) => {
    let state = 0;
    for (let back = at - breadth - 1; back < at; back += 1) {
      state = state * prints + Math.max(0, cells[order[back] ?? 0] ?? 0);
    }
    for (const [print, base] of bases.entries()) state = state * base + (left[print] ?? 0);
    return state;
  };

  /** What the lines not yet begun cannot help among themselves. */
  const boundRest = (at: number) => {
    if (at % breadth > 0) return 0;
    const grid = { columns: breadth, rows: (order.length - at) / breadth };
    return boundTouching({ ...task, grid, counts: left });
  };

  const descend = (at: number, slack: number): boolean => {
    const place = order[at];
    if (place === undefined) return true;
    const seen = hopeless[at];
    const state = key(at);
    if ((seen?.get(state) ?? -1) >= slack || boundRest(at) > slack) return false;
    for (let print = 0; print < prints; print += 1) {
      const pin = pins[at] ?? FREE;
      if ((left[print] ?? 0) === 0 || (pin !== FREE && pin !== print)) continue;
      const before = twin[print] ?? -1;
      if (before >= 0 && left[before] === task.counts[before] && left[print] === task.counts[print])
        continue;
      let alike = 0;
      for (const step of near) if (cells[place + step] === print) alike += 1;
      if (alike > slack) continue;
      spent += 1;
      if (spent > steps) return false;
      cells[place] = print;
      left[print] = (left[print] ?? 0) - 1;
      if (descend(at + 1, slack - alike)) return true;
      left[print] = (left[print] ?? 0) + 1;
      cells[place] = FREE;
    }
    if (spent <= steps) seen?.set(state, slack);
    return false;
  };

  return (allowed) => {
    if (descend(0, allowed)) return writeBoard(board);
    return spent > steps ? 'spent' : undefined;
  };
}

/** For each print the one before it with as many blocks, while none is pinned: they are alike. */
function findTwins({ counts, fixed }: LayoutTask): readonly number[] {
  const isPinned = fixed?.some((row) => /[^.]/.test(row)) ?? false;
  return counts.map((count, print) => (isPinned ? -1 : counts.slice(0, print).lastIndexOf(count)));
}
