import { ROOM_SLACK } from './list-levels.ts';
import type { Tableau } from './pivot-basis.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/**
 * The basis to start from: strips of one kind alone, as many as that kind needs.
 */
export function startBasis(problem: StripProblem): Tableau {
  const { demand } = problem;
  const singles = demand.map((_, kind) => fillWith(problem, kind));
  const held = singles.map((pattern, kind) => pattern.counts[kind] ?? 1);
  return {
    basis: singles.map((pattern) => ({ pattern })),
    inverse: held.map((count, kind) => {
      const row = new Float64Array(demand.length);
      row[kind] = 1 / count;
      return row;
    }),
    amounts: held.map((count, kind) => (demand[kind] ?? 0) / count),
  };
}

/** The strip of one kind alone that is lowest for each piece. */
function fillWith({ levels, usable, demand }: StripProblem, kind: number): Pattern {
  let best = { level: 0, count: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let level = 0; level < levels.length; level += 1) {
    const { height = 0, widths = [] } = levels[level] ?? {};
    const width = widths[kind] ?? Number.POSITIVE_INFINITY;
    const count = Math.min(demand[kind] ?? 0, Math.floor((usable + ROOM_SLACK) / width));
    if (count === 0 || height / count >= least) continue;
    least = height / count;
    best = { level, count };
  }
  const { level, count } = best;
  return { level, counts: demand.map((_, at) => (at === kind ? count : 0)) };
}
