import { fillAlone } from './best-alone.ts';
import { ROOM_SLACK } from './list-levels.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/**
 * Strips of one kind alone, as full as can be: for each width that a kind takes, in the lowest strip
 * where it takes it. A higher one holds no more of it.
 *
 * @returns in the order of the levels
 *
 * @example
 * listAlone({ usable: 100, levels: [{ height: 20, widths: [30], turned: [false] }, { height: 30, widths: [20], turned: [true] }], demand: [9] }) // => [{ level: 0, counts: [3] }, { level: 1, counts: [5] }]
 */
export function listAlone(problem: StripProblem): readonly Pattern[] {
  const { levels, demand, usable } = problem;
  const patterns: Pattern[] = [];
  for (let level = 0; level < levels.length; level += 1) {
    for (let kind = 0; kind < demand.length; kind += 1) {
      const width = levels[level]?.widths[kind] ?? Number.POSITIVE_INFINITY;
      const below = levels[level - 1]?.widths[kind] ?? Number.POSITIVE_INFINITY;
      const isNarrower = width < below && (demand[kind] ?? 0) > 0;
      if (isNarrower && width <= usable + ROOM_SLACK)
        patterns.push(fillAlone(problem, level, kind));
    }
  }
  return patterns;
}
