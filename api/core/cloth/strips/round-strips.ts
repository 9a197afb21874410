import { type Relaxation, solveRelaxation } from './solve-relaxation.ts';
import {
  type Budget,
  type Pattern,
  type StripList,
  type StripProblem,
  takeOff,
} from './strip-plan.ts';

/**
 * A plan of whole strips from the one in fractions: whole parts are kept, the rest is solved anew,
 * and where no whole part is left the most nearly whole strip is taken. Always places every piece.
 */
export function roundStrips(
  problem: StripProblem,
  relaxation: Relaxation,
  budget: Budget,
): StripList {
  const strips: { pattern: Pattern; times: number }[] = [];
  let { demand } = problem;
  let relaxed = usedPatterns(relaxation);
  while (demand.some((wanted) => wanted > 0)) {
    for (const { pattern, times } of pickWhole(relaxed, demand)) {
      const useful = Math.min(times, timesUseful(pattern, demand));
      if (useful <= 0) continue;
      strips.push({ pattern, times: useful });
      demand = takeOff(demand, pattern, useful);
    }
    if (demand.some((wanted) => wanted > 0)) relaxed = solveRest(problem, demand, budget);
  }
  return strips;
}

/** How often the relaxation uses which patterns. */
export function usedPatterns({ basis, amounts }: Relaxation): StripList {
  return basis.flatMap(({ pattern }, row) =>
    pattern === undefined ? [] : [{ pattern, times: amounts[row] ?? 0 }],
  );
}

/** Whole parts of the plan in fractions, or one strip of the most nearly whole pattern. */
function pickWhole(relaxed: StripList, demand: readonly number[]): StripList {
  const wholes = relaxed
    .map(({ pattern, times }) => ({ pattern, times: Math.floor(times + 1e-6) }))
    .filter(({ times }) => times > 0);
  if (wholes.length > 0) return wholes;
  const useful = relaxed.filter(({ pattern }) => timesUseful(pattern, demand) > 0);
  const nearest = useful.reduce((one, other) => (other.times > one.times + 1e-9 ? other : one));
  return [{ pattern: nearest.pattern, times: 1 }];
}

/** How often a pattern still places a piece that is wanted. */
function timesUseful(pattern: Pattern, demand: readonly number[]): number {
  return pattern.counts.reduce(
    (most, count, kind) =>
      count === 0 ? most : Math.max(most, Math.ceil((demand[kind] ?? 0) / count)),
    0,
  );
}

/** Solves the relaxation for what is left, over the kinds that are left. */
function solveRest(problem: StripProblem, demand: readonly number[], budget: Budget): StripList {
  const active = demand.flatMap((wanted, kind) => (wanted > 0 ? [kind] : []));
  const pick = (values: readonly number[]) => active.map((kind) => values[kind] ?? 0);
  const levels = problem.levels.map((level) => ({
    height: level.height,
    widths: active.map((kind) => level.widths[kind] ?? Number.POSITIVE_INFINITY),
    turned: [],
  }));
  const rest = { usable: problem.usable, levels, demand: pick(demand) };
  return usedPatterns(solveRelaxation(rest, budget)).map(({ pattern, times }) => {
    const counts = demand.map(() => 0);
    for (const [at, kind] of active.entries()) counts[kind] = pattern.counts[at] ?? 0;
    return { pattern: { level: pattern.level, counts }, times };
  });
}
