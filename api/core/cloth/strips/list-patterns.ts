import { ROOM_SLACK } from './list-levels.ts';
import type { Budget, Pattern, StripProblem } from './strip-plan.ts';

/** Which patterns are asked for. */
export interface PatternSearch {
  readonly prices: readonly number[];
  /** Greatest height beyond the worth held, mm. */
  readonly excess: number;
  /** Greatest number of patterns listed. */
  readonly most: number;
  readonly budget: Budget;
}

/**
 * Every full pattern whose height is beyond the worth it holds by no more than an excess.
 *
 * Full is a pattern into which no further piece fits that is wanted; one that would fit into a lower
 * strip is left out. Any plan can be made of full patterns alone, some pieces then being too many.
 *
 * @returns nothing where there are more than `most`, or the budget ran out
 */
export function listPatterns(
  problem: StripProblem,
  search: PatternSearch,
): readonly Pattern[] | undefined {
  const patterns: Pattern[] = [];
  for (const level of problem.levels.keys()) {
    if (!listLevel(patterns, { problem, level, search })) return undefined;
  }
  return patterns;
}

/** The kinds that fit a level, those of most worth for their width first. */
interface Order {
  readonly kinds: Int32Array;
  readonly widths: Float64Array;
  readonly prices: Float64Array;
  readonly rates: Float64Array;
  /** Greatest number of each in one strip. */
  readonly wanted: Int32Array;
}

function listLevel(
  patterns: Pattern[],
  {
    problem,
    level,
    search,
  }: { readonly problem: StripProblem; readonly level: number; readonly search: PatternSearch },
): boolean {
  const { height = 0 } = problem.levels[level] ?? {};
  const { budget, most } = search;
  const least = height - search.excess;
  if (
    budget.steps > 1 &&
    patterns.length <= most &&
    isTooDear(problem, level, { ...search, least })
  ) {
    budget.steps -= 1;
    return true;
  }
  const { kinds, widths, prices, rates, wanted } = orderKinds(problem, level, search.prices);
  const isFull = judgeFull(problem, level);
  const counts = new Int32Array(problem.demand.length);
  const visit = (at: number, room: number, worth: number): boolean => {
    budget.steps -= 1;
    if (budget.steps <= 0 || patterns.length > most) return false;
    if (at === kinds.length) {
      if (worth >= least && isFull(counts, room)) {
        patterns.push({ level, counts: Array.from(counts) });
      }
      return true;
    }
    if (worth + (room + ROOM_SLACK) * (rates[at] ?? 0) < least) return true;
    const kind = kinds[at] ?? 0;
    const width = widths[at] ?? 1;
    const price = prices[at] ?? 0;
    const fitting = Math.floor((room + ROOM_SLACK) / width);
    for (let count = Math.min(wanted[at] ?? 0, fitting); count >= 0; count -= 1) {
      counts[kind] = count;
      if (!visit(at + 1, room - count * width, worth + count * price)) return false;
    }
    return true;
  };
  return visit(0, problem.usable, 0);
}

/** Whether even a strip full of the best kind is worth too little, so that nothing need be ordered. */
function isTooDear(
  { levels, usable }: StripProblem,
  level: number,
  { prices, least }: { readonly prices: readonly number[]; readonly least: number },
): boolean {
  const widths = levels[level]?.widths ?? [];
  let best = Number.NEGATIVE_INFINITY;
  for (let kind = 0; kind < widths.length; kind += 1) {
    const width = widths[kind] ?? Number.POSITIVE_INFINITY;
    if (width <= usable + ROOM_SLACK) best = Math.max(best, (prices[kind] ?? 0) / width);
  }
  return (usable + ROOM_SLACK) * best < least;
}

function orderKinds(
  { levels, usable, demand }: StripProblem,
  level: number,
  prices: readonly number[],
): Order {
  const widths = levels[level]?.widths ?? [];
  const rate = (kind: number) => (prices[kind] ?? 0) / (widths[kind] ?? 1);
  const kinds = [...widths.keys()]
    .filter((kind) => (widths[kind] ?? 0) <= usable + ROOM_SLACK)
    .sort((one, other) => rate(other) - rate(one));
  return {
    kinds: Int32Array.from(kinds),
    widths: Float64Array.from(kinds, (kind) => widths[kind] ?? 1),
    prices: Float64Array.from(kinds, (kind) => prices[kind] ?? 0),
    rates: Float64Array.from(kinds, rate),
    wanted: Int32Array.from(kinds, (kind) => demand[kind] ?? 0),
  };
}

/** Whether no further piece that is wanted fits, and the strip below would not hold the same. */
function judgeFull({ levels, demand, usable }: StripProblem, level: number) {
  const own = Float64Array.from(levels[level]?.widths ?? []);
  const below = Float64Array.from(levels[level - 1]?.widths ?? own);
  const wanted = Int32Array.from(demand);
  // The narrowest first: what follows one that is too wide is too wide as well.
  const narrow = Int32Array.from(own.keys()).sort(
    (one, other) => (own[one] ?? 0) - (own[other] ?? 0),
  );
  return (counts: Int32Array, room: number): boolean => {
    for (let at = 0; at < narrow.length; at += 1) {
      const kind = narrow[at] ?? 0;
      if ((own[kind] ?? 0) > room + ROOM_SLACK) break;
      if ((counts[kind] ?? 0) < (wanted[kind] ?? 0)) return false;
    }
    if (level === 0) return true;
    let lower = 0;
    for (let kind = 0; kind < counts.length; kind += 1) {
      const count = counts[kind] ?? 0;
      if (count > 0) lower += count * (below[kind] ?? 0);
    }
    return lower > usable + ROOM_SLACK;
  };
}
