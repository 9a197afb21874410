import type { Level } from './list-levels.ts';

/** What is to be cut from strips of which heights. */
export interface StripProblem {
  /** Width of the roll that can be cut, mm. */
  readonly usable: number;
  readonly levels: readonly Level[];
  /** Pieces wanted of each kind. */
  readonly demand: readonly number[];
}

/** Strips cut alike: of which level, and how many of each kind lie in one. */
export interface Pattern {
  readonly level: number;
  readonly counts: readonly number[];
}

/** Strips to cut: each pattern with how often. */
export type StripList = readonly { readonly pattern: Pattern; readonly times: number }[];

/** Steps that are left to a search; counted, never timed, so that equal input gives equal output. */
export interface Budget {
  steps: number;
}

/**
 * What is still wanted after some strips of one pattern; a piece too many is no fault.
 *
 * @example
 * takeOff([5, 1], { level: 0, counts: [2, 1] }, 2) // => [1, 0]
 */
export function takeOff(
  demand: readonly number[],
  pattern: Pattern,
  times: number,
): readonly number[] {
  return demand.map((wanted, kind) => Math.max(0, wanted - times * (pattern.counts[kind] ?? 0)));
}

/** Σ height of the strips, mm. */
export function lengthOf(levels: readonly Level[], strips: StripList): number {
  return strips.reduce(
    (sum, { pattern, times }) => sum + times * (levels[pattern.level]?.height ?? 0),
    0,
  );
}
