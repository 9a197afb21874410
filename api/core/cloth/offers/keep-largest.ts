import type { StripList } from '../strips/strip-plan.ts';

/** One way to cut a sheet into strips across its width. */
export interface Filling {
  /** Pieces of each kind, no more than are wanted. */
  readonly counts: readonly number[];
  readonly strips: StripList;
}

/**
 * Leaves out every filling of which another holds as much of each kind.
 *
 * @example
 * keepLargest([{ counts: [1, 2], strips: [] }, { counts: [2, 2], strips: [] }, { counts: [3, 0], strips: [] }]) // => [{ counts: [2, 2], strips: [] }, { counts: [3, 0], strips: [] }]
 */
export function keepLargest(fillings: readonly Filling[]): readonly Filling[] {
  const sum = ({ counts }: Filling) => counts.reduce((total, count) => total + count, 0);
  const kept: Filling[] = [];
  for (const filling of fillings.toSorted((one, other) => sum(other) - sum(one))) {
    const isHeld = kept.some((larger) =>
      filling.counts.every((count, kind) => count <= (larger.counts[kind] ?? 0)),
    );
    if (!isHeld) kept.push(filling);
  }
  return kept;
}
