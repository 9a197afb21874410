/** One way to lay the cells so far, told by what matters for the cells to come. */
interface State {
  /** The last cells laid, named by the order in which their prints first show; −1 before the first. */
  readonly frontier: readonly number[];
  /** Blocks laid of each print: those in the frontier in the order of their names, then the others. */
  readonly counts: readonly number[];
  readonly pairs: number;
}

/**
 * The fewest touching pairs for every way to share a grid among prints, by a table over all frontiers:
 * exact, and nothing like the search it is held against. Prints are alike here, so the ways are told by
 * their counts, largest first, joined by commas.
 *
 * @param grid its columns are best the shorter side
 * @param prints at most 5 or so, some of which may have no block
 */
export function fewestByFrontier(
  grid: { readonly columns: number; readonly rows: number },
  prints: number,
  touch: 'corners' | 'sides',
): ReadonlyMap<string, number> {
  const { columns, rows } = grid;
  let layer = new Map<string, State>();
  const nothing = Array.from({ length: columns + 1 }, () => -1);
  keep(layer, { frontier: nothing, counts: Array.from({ length: prints }, () => 0), pairs: 0 });
  for (let cell = 0; cell < columns * rows; cell += 1) {
    const next = new Map<string, State>();
    const near = listNear(cell, columns, touch);
    for (const state of layer.values()) {
      for (let print = 0; print < prints; print += 1) keep(next, lay(state, print, near));
    }
    layer = next;
  }
  const fewest = new Map<string, number>();
  for (const { counts, pairs } of layer.values()) {
    const key = counts.toSorted((one, other) => other - one).join();
    fewest.set(key, Math.min(pairs, fewest.get(key) ?? Number.POSITIVE_INFINITY));
  }
  return fewest;
}

/** Which cells of the frontier touch the next cell, by how many cells back they lie. */
function listNear(cell: number, columns: number, touch: 'corners' | 'sides'): readonly number[] {
  const column = cell % columns;
  const [beside, above] = [column > 0 ? [1] : [], cell >= columns ? [columns] : []];
  if (touch === 'sides' || cell < columns) return [...beside, ...above];
  const left = column > 0 ? [columns + 1] : [];
  const right = column < columns - 1 ? [columns - 1] : [];
  return [...new Set([...beside, ...above, ...left, ...right])];
}

function lay({ frontier, counts, pairs }: State, print: number, near: readonly number[]): State {
  const alike = near.filter((back) => frontier[frontier.length - back] === print).length;
  const laid = counts.map((count, at) => (at === print ? count + 1 : count));
  return { frontier: [...frontier.slice(1), print], counts: laid, pairs: pairs + alike };
}

/** Names the prints anew and keeps the state where none as good is there. */
function keep(layer: Map<string, State>, { frontier, counts, pairs }: State): void {
  const seen = [...new Set(frontier.filter((print) => print >= 0))];
  const others = counts.flatMap((count, print) => (seen.includes(print) ? [] : [count]));
  const named: State = {
    frontier: frontier.map((print) => (print < 0 ? -1 : seen.indexOf(print))),
    counts: [
      ...seen.map((print) => counts[print] ?? 0),
      ...others.sort((one, other) => other - one),
    ],
    pairs,
  };
  const key = `${named.frontier.join()}|${named.counts.join()}`;
  const known = layer.get(key);
  if (known === undefined || known.pairs > pairs) layer.set(key, named);
}
