/** Counts of prints that miss the grid, and what may become of them. */
export interface Counted {
  /** Blocks of each print, whole. */
  readonly counts: readonly number[];
  /** Blocks of the grid, whole. */
  readonly blocks: number;
  /** What each print keeps at least: the blocks of it that are pinned. */
  readonly least: readonly number[];
  /** Whether the count of a print may be another. */
  readonly isFree: (print: number) => boolean;
}

/**
 * Shares what is over or short of the grid among the prints that are free, as evenly as whole blocks and pins allow;
 * where it does not come out even, those before get one more. Plain counting.
 *
 * @returns nothing where the free prints cannot take it up.
 *
 * @example
 * shareDifference({ counts: [6, 5, 5], blocks: 20, least: [0, 0, 0], isFree: (print) => print > 0 }) // => [6, 7, 7]
 * shareDifference({ counts: [9, 1, 5], blocks: 10, least: [0, 1, 0], isFree: (print) => print > 0 }) // => [9, 1, 0]
 */
export function shareDifference({
  counts,
  blocks,
  least,
  isFree,
}: Counted): readonly number[] | undefined {
  const shared = counts.map((count, at) => (isFree(at) ? Math.max(count, least[at] ?? 0) : count));
  const room = (at: number) => (shared[at] ?? 0) - (least[at] ?? 0);
  for (;;) {
    const rest = blocks - shared.reduce((sum, count) => sum + count, 0);
    if (rest === 0) return shared;
    const takers = [...shared.keys()].filter((at) => isFree(at) && (rest > 0 || room(at) > 0));
    if (takers.length === 0) return undefined;
    const each = Math.floor(Math.abs(rest) / takers.length);
    const left = Math.abs(rest) % takers.length;
    for (const [turn, at] of takers.entries()) {
      const part = each + (turn < left ? 1 : 0);
      shared[at] = (shared[at] ?? 0) + (rest > 0 ? part : -Math.min(part, room(at)));
    }
  }
}
