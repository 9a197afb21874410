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
function fillWith(problem: StripProblem, kind: number): Pattern {
  const ways = problem.levels.map(({ height, widths }, level) => {
    const width = widths[kind] ?? Number.POSITIVE_INFINITY;
    const fitting = Math.floor((problem.usable + ROOM_SLACK) / width);
    const count = Math.min(problem.demand[kind] ?? 0, fitting);
    return { level, count, rate: count > 0 ? height / count : Number.POSITIVE_INFINITY };
  });
  const best = ways.reduce((one, other) => (other.rate < one.rate ? other : one));
  return {
    level: best.level,
    counts: problem.demand.map((_, at) => (at === kind ? best.count : 0)),
  };
}
