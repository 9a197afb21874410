/**
 * What matters of the cells laid so far for the cells to come, in one number: the last cells laid, named
 * by the order in which their prints first show (0 before the first cell), and the blocks laid of each
 * print, those in the frontier in the order of their names, then the others, most blocks first.
 */
type Key = number;

interface State {
  readonly frontier: number[];
  readonly counts: number[];
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
  const base = columns * rows + 1;
  let layer = new Map<Key, number>([[0, 0]]);
  for (let cell = 0; cell < columns * rows; cell += 1) {
    const next = new Map<Key, number>();
    const near = listNear(cell, columns, touch);
    for (const [key, pairs] of layer) {
      const { frontier, counts } = unpack(key, { places: columns + 1, prints, base });
      for (let print = 0; print < prints; print += 1) {
        let alike = 0;
        for (const back of near) if (frontier[frontier.length - back] === print + 1) alike += 1;
        const own = pack({ frontier, counts }, { print, base });
        const known = next.get(own);
        if (known === undefined || known > pairs + alike) next.set(own, pairs + alike);
      }
    }
    layer = next;
  }
  const fewest = new Map<string, number>();
  for (const [key, pairs] of layer) {
    const { counts } = unpack(key, { places: columns + 1, prints, base });
    const name = counts.sort((one, other) => other - one).join();
    fewest.set(name, Math.min(pairs, fewest.get(name) ?? Number.POSITIVE_INFINITY));
  }
  return fewest;
}

/** Which cells of the frontier touch the next cell, by how many cells back they lie. */
function listNear(cell: number, columns: number, touch: 'corners' | 'sides'): readonly number[] {
  const column = cell % columns;
  const [beside, above] = [column > 0 ? [1] : [], cell >= columns ? [columns] : []];
  if (touch === 'sides' || cell < columns) return [...new Set([...beside, ...above])];
  const left = column > 0 ? [columns + 1] : [];
  const right = column < columns - 1 ? [columns - 1] : [];
  return [...new Set([...beside, ...above, ...left, ...right])];
}

/** The state after one more block, prints named anew. */
function pack(
  { frontier, counts }: State,
  { print, base }: { readonly print: number; readonly base: number },
): Key {
  const names: number[] = [];
  let key = 0;
  for (let place = 1; place <= frontier.length; place += 1) {
    const own = place === frontier.length ? print + 1 : (frontier[place] ?? 0);
    let name = own === 0 ? 0 : names.indexOf(own) + 1;
    if (own > 0 && name === 0) name = names.push(own);
    key = key * (counts.length + 1) + name;
  }
  const blocks = (own: number) => (counts[own - 1] ?? 0) + (own === print + 1 ? 1 : 0);
  const others: number[] = [];
  for (let own = 1; own <= counts.length; own += 1)
    if (!names.includes(own)) others.push(blocks(own));
  for (const own of names) key = key * base + blocks(own);
  for (const own of others.sort((one, other) => other - one)) key = key * base + own;
  return key;
}

function unpack(
  key: Key,
  size: { readonly places: number; readonly prints: number; readonly base: number },
): State {
  let rest = key;
  const take = (radix: number) => {
    const digit = rest % radix;
    rest = (rest - digit) / radix;
    return digit;
  };
  const counts = Array.from({ length: size.prints }, () => take(size.base)).reverse();
  const frontier = Array.from({ length: size.places }, () => take(size.prints + 1)).reverse();
  return { frontier, counts };
}
