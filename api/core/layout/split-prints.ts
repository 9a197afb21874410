/** A part of the cells that must be filled from prints of its own. */
export interface Part {
  readonly cells: number;
  /** The most cells of it that one print can take. */
  readonly most: number;
}

/** How many cells of the first part are filled: the most left for the second, and how it came about. */
interface State {
  readonly left: number;
  readonly before?: State;
  readonly isFirst: boolean;
}

/**
 * Splits prints between two parts of a quilt so that each part can be filled from its own.
 *
 * Exact: for every number of cells of the first part that some prints can fill, the most that the
 * others can fill of the second (a 0-1 knapsack, Bellman's recurrence).
 *
 * @param supply blocks there are of each print
 * @returns for each print whether it goes to the first part; nothing where no split will do
 *
 * @example
 * splitPrints([3, 1, 2], { cells: 3, most: 2 }, { cells: 2, most: 9 }) // => [false, true, true]
 * splitPrints([3], { cells: 1, most: 1 }, { cells: 1, most: 1 }) // => undefined
 */
export function splitPrints(
  supply: readonly number[],
  first: Part,
  second: Part,
): readonly boolean[] | undefined {
  let states = new Map<number, State>([[0, { left: 0, isFirst: false }]]);
  for (const blocks of supply) {
    const next = new Map<number, State>();
    const offer = (filled: number, state: State) => {
      const known = next.get(filled);
      if (known === undefined || state.left > known.left) next.set(filled, state);
    };
    for (const [filled, before] of states) {
      const left = before.left + Math.min(blocks, second.most);
      offer(filled, { left, before, isFirst: false });
      const reached = Math.min(first.cells, filled + Math.min(blocks, first.most));
      offer(reached, { left: before.left, before, isFirst: true });
    }
    states = next;
  }
  const end = states.get(first.cells);
  if (end === undefined || end.left < second.cells) return undefined;
  return readBack(end);
}

function readBack(end: State): readonly boolean[] {
  const places: boolean[] = [];
  for (let state = end; state.before !== undefined; state = state.before) {
    places.unshift(state.isFirst);
  }
  return places;
}
