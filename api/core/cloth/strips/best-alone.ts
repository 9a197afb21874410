import { ROOM_SLACK } from './list-levels.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/**
 * A strip of one kind alone, as full as can be.
 *
 * @returns a pattern of no pieces where the kind does not fit the level
 */
export function fillAlone(
  { usable, levels, demand }: StripProblem,
  level: number,
  kind: number,
): Pattern {
  const width = levels[level]?.widths[kind] ?? Number.POSITIVE_INFINITY;
  const most = Math.floor((usable + ROOM_SLACK) / width);
  return { level, counts: demand.map((wanted, at) => (at === kind ? Math.min(wanted, most) : 0)) };
}

/**
 * The one kind that puts most cloth into pieces when a length is cut into it alone: exact, every
 * number of strips of one way being tried, with as many of the other as still fit.
 *
 * @param areas of one piece of each kind
 * @param room length of the roll for strips, mm
 * @returns pieces of each kind, of one kind alone
 */
export function bestAlone(
  problem: StripProblem,
  areas: readonly number[],
  room: number,
): readonly number[] {
  const most = problem.demand.map((wanted, kind) =>
    Math.min(wanted, mostAlone(problem, kind, room)),
  );
  const area = (kind: number) => (most[kind] ?? 0) * (areas[kind] ?? 0);
  const best = [...most.keys()].reduce((one, other) => (area(other) > area(one) ? other : one));
  return most.map((count, kind) => (kind === best ? count : 0));
}

function mostAlone(problem: StripProblem, kind: number, room: number): number {
  const ways = problem.levels.flatMap(({ height }, level) => {
    const held = fillAlone(problem, level, kind).counts[kind] ?? 0;
    return held > 0 ? [{ height, held }] : [];
  });
  const [low] = ways;
  if (low === undefined) return 0;
  const high = ways.find((way) => way.held > low.held) ?? low;
  const stripsIn = (length: number, height: number) => Math.floor((length + ROOM_SLACK) / height);
  let most = 0;
  for (let tall = 0; tall <= stripsIn(room, high.height); tall += 1) {
    const lows = stripsIn(room - tall * high.height, low.height);
    most = Math.max(most, tall * high.held + lows * low.held);
  }
  return most;
}
