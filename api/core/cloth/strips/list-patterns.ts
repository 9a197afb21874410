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

function listLevel(
  patterns: Pattern[],
  {
    problem,
    level,
    search,
  }: { readonly problem: StripProblem; readonly level: number; readonly search: PatternSearch },
): boolean {
  const { height = 0, widths = [] } = problem.levels[level] ?? {};
  const { prices, budget, most } = search;
  const rate = (kind: number) => (prices[kind] ?? 0) / (widths[kind] ?? 1);
  const order = [...widths.keys()]
    .filter((kind) => (widths[kind] ?? 0) <= problem.usable + ROOM_SLACK)
    .sort((one, other) => rate(other) - rate(one));
  const counts = widths.map(() => 0);
  const least = height - search.excess;
  const visit = (at: number, room: number, worth: number): boolean => {
    budget.steps -= 1;
    if (budget.steps <= 0 || patterns.length > most) return false;
    const kind = order[at];
    if (kind === undefined) {
      if (worth >= least && isFull(problem, level, { counts, room })) {
        patterns.push({ level, counts: [...counts] });
      }
      return true;
    }
    if (worth + (room + ROOM_SLACK) * rate(kind) < least) return true;
    const width = widths[kind] ?? 1;
    const fitting = Math.floor((room + ROOM_SLACK) / width);
    for (let count = Math.min(problem.demand[kind] ?? 0, fitting); count >= 0; count -= 1) {
      counts[kind] = count;
      if (!visit(at + 1, room - count * width, worth + count * (prices[kind] ?? 0))) return false;
    }
    counts[kind] = 0;
    return true;
  };
  return visit(0, problem.usable, 0);
}

/** Whether no further piece that is wanted fits, and the strip below would not hold the same. */
function isFull(
  { levels, demand, usable }: StripProblem,
  level: number,
  pattern: { readonly counts: readonly number[]; readonly room: number },
): boolean {
  const widths = levels[level]?.widths ?? [];
  const below = levels[level - 1]?.widths ?? [];
  let lower = level === 0 ? Number.POSITIVE_INFINITY : 0;
  for (const [kind, width] of widths.entries()) {
    const count = pattern.counts[kind] ?? 0;
    if (width <= pattern.room + ROOM_SLACK && count < (demand[kind] ?? 0)) return false;
    if (count > 0) lower += count * (below[kind] ?? 0);
  }
  return lower > usable + ROOM_SLACK;
}
