import type { Board } from './board.ts';

/**
 * The order in which a plain repeat agrees best with the pinned blocks: each place of the repeat goes to
 * the print pinned there most often, the most frequent first; the rest as in the order given.
 *
 * @param order the prints that have blocks, each once
 * @param shift how far the repeat moves from row to row
 */
export function followPins(
  board: Board,
  order: readonly number[],
  shift: number,
): readonly number[] {
  const { cells, places, row, column, prints } = board;
  const pinned = new Int32Array(order.length * prints);
  for (const place of places) {
    const print = cells[place] ?? -1;
    if (print < 0) continue;
    const at = ((column[place] ?? 0) + shift * (row[place] ?? 0)) % order.length;
    pinned[at * prints + print] = (pinned[at * prints + print] ?? 0) + 1;
  }
  const matches = [...pinned.keys()]
    .filter((key) => (pinned[key] ?? 0) > 0)
    .sort((one, other) => (pinned[other] ?? 0) - (pinned[one] ?? 0));
  const taken = new Map<number, number>();
  const used = new Set<number>();
  for (const key of matches) {
    const [at, print] = [Math.floor(key / prints), key % prints];
    if (taken.has(at) || used.has(print)) continue;
    taken.set(at, print);
    used.add(print);
  }
  const rest = order.filter((print) => !used.has(print));
  return order.map((_, at) => taken.get(at) ?? rest.shift() ?? 0);
}
