/** Neighbouring hands that were dealt alike. */
export interface Deal {
  readonly hands: number;
  /** What each of them holds of each kind, in the order of the totals. */
  readonly each: readonly number[];
}

/**
 * Deals things of several kinds to hands in turn, one kind after the other without starting over:
 * hand i gets the i-th thing, the (i + hands)-th and so on. So each hand gets ⌊total/hands⌋ or
 * ⌈total/hands⌉ of every kind, and of every run of neighbouring kinds together; where all the things
 * come to a multiple of the hands, each holds equally many. Plain counting.
 *
 * @param totals things of each kind, whole, 0 or more
 * @param hands whole, 1 or more
 * @returns hands dealt alike together, at most one group more than there are kinds
 *
 * @example
 * dealEvenly([3, 5], 4) // => [{ hands: 3, each: [1, 1] }, { hands: 1, each: [0, 2] }]
 */
export function dealEvenly(totals: readonly number[], hands: number): readonly Deal[] {
  let laid = 0;
  const starts = totals.map((total) => {
    const start = laid % hands;
    laid += total;
    return start;
  });
  // What a hand gets changes only where a kind begins or ends.
  const edges = [...new Set([0, ...starts, laid % hands, hands])].toSorted((a, b) => a - b);
  return edges.slice(0, -1).map((from, at) => ({
    hands: (edges[at + 1] ?? hands) - from,
    each: totals.map((total, kind) => {
      const turn = (from - (starts[kind] ?? 0) + hands) % hands;
      return Math.floor(total / hands) + (turn < total % hands ? 1 : 0);
    }),
  }));
}
