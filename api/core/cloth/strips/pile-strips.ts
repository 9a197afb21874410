import { fillStrip } from './fill-strip.ts';
import {
  type Budget,
  type Pattern,
  type StripList,
  type StripProblem,
  takeOff,
} from './strip-plan.ts';

/**
 * A plan made strip by strip: the piece that needs the tallest strip opens it, and the rest of the
 * strip is filled with the pieces of most worth. Always places every piece.
 *
 * @param worth of one piece of each kind
 */
export function pileStrips(
  problem: StripProblem,
  worth: readonly number[],
  budget: Budget,
): StripList {
  const strips: { pattern: Pattern; times: number }[] = [];
  let { demand } = problem;
  while (demand.some((wanted) => wanted > 0)) {
    const pattern = openStrip(problem, { demand, worth }, budget);
    const times = Math.min(
      ...pattern.counts.flatMap((count, kind) =>
        count === 0 ? [] : [Math.max(1, Math.floor((demand[kind] ?? 0) / count))],
      ),
    );
    strips.push({ pattern, times });
    demand = takeOff(demand, pattern, times);
  }
  return strips;
}

function openStrip(
  problem: StripProblem,
  left: { readonly demand: readonly number[]; readonly worth: readonly number[] },
  budget: Budget,
): Pattern {
  const lowest = left.demand.map((wanted, kind) =>
    wanted === 0 ? -1 : problem.levels.findIndex((level) => Number.isFinite(level.widths[kind])),
  );
  const level = Math.max(...lowest);
  const opener = lowest.indexOf(level);
  const widths = problem.levels[level]?.widths ?? [];
  const most = left.demand.map((wanted, kind) => (kind === opener ? wanted - 1 : wanted));
  const room = problem.usable - (widths[opener] ?? 0);
  const filling = fillStrip(room, { widths, worth: left.worth, most }, { budget, least: 0 });
  return {
    level,
    counts: most.map((_, kind) => (filling.counts[kind] ?? 0) + (kind === opener ? 1 : 0)),
  };
}
