import type { Membership } from './choose-split.ts';
import { searchWhole } from './search-whole.ts';
import type { Relaxation } from './solve-relaxation.ts';
import { startDictionary } from './start-dictionary.ts';
import {
  type Budget,
  lengthOf,
  type Pattern,
  type StripList,
  type StripProblem,
  takeOff,
} from './strip-plan.ts';

/** Whole plans that are looked for. */
export interface StripSearch {
  /** Patterns that a plan may be made of, beside those of the relaxation. */
  readonly patterns: readonly Pattern[];
  /** Greatest length, mm. */
  readonly target: number;
  /** By how much another plan must be shorter to be of use, mm. */
  readonly step: number;
  /** No plan is shorter, mm. */
  readonly bound: number;
  readonly budget: Budget;
}

/** A plan found, or the knowledge that there is none, or neither. */
export interface SearchResult {
  /** The shortest plan found that is no longer than the target. */
  readonly strips?: StripList;
  /** True where every possibility was tried. */
  readonly isComplete: boolean;
}

/**
 * The shortest plan of whole strips of given patterns, no longer than a target: `searchWhole` from the
 * relaxation, whose prices tell at once what each pattern would add to the least length.
 *
 * @param relaxation solved to the end
 */
export function searchStrips(
  problem: StripProblem,
  relaxation: Relaxation,
  search: StripSearch,
): SearchResult {
  const used = relaxation.basis.flatMap(({ pattern }) => (pattern === undefined ? [] : [pattern]));
  const patterns = [...search.patterns, ...used];
  const listTimes = (times: Float64Array): StripList =>
    patterns.flatMap((pattern, name) =>
      (times[name] ?? 0) > 0 ? [{ pattern, times: times[name] ?? 0 }] : [],
    );
  const found = searchWhole(startDictionary(problem, relaxation, patterns), {
    ...search,
    names: patterns.length,
    sets: listSets(patterns, problem),
    measure: (times) => measurePlan(problem, listTimes(times)),
  });
  return {
    ...(found.times && { strips: listTimes(found.times) }),
    isComplete: found.isComplete,
  };
}

/** Length of a plan that places every piece, mm. */
function measurePlan({ levels, demand }: StripProblem, strips: StripList): number | undefined {
  const left = strips.reduce((rest, { pattern, times }) => takeOff(rest, pattern, times), demand);
  return left.every((wanted) => wanted === 0) ? lengthOf(levels, strips) : undefined;
}

/**
 * Strips of some height or more, which settle the length; strips that hold some number of one kind
 * or more.
 */
function listSets(
  patterns: readonly Pattern[],
  problem: StripProblem,
): readonly (readonly Membership[])[] {
  const members = (has: (pattern: Pattern) => boolean): Membership => {
    const set = new Uint8Array(patterns.length);
    for (let name = 0; name < set.length; name += 1) {
      const pattern = patterns[name];
      if (pattern !== undefined && has(pattern)) set[name] = 1;
    }
    return set;
  };
  const levels = [...problem.levels.keys()].map((level) =>
    members((pattern) => pattern.level >= level),
  );
  const kinds = [...problem.demand.keys()].flatMap((kind) =>
    [1, 2, 3, 4, 5, 6].map((least) => members((pattern) => (pattern.counts[kind] ?? 0) >= least)),
  );
  return [levels, kinds];
}
