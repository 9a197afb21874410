import { bestAlone, fillAlone } from './best-alone.ts';
import { listFew } from './list-few.ts';
import { listLevels, type PieceKind, ROOM_SLACK } from './list-levels.ts';
import { searchWhole } from './search-whole.ts';
import { solveRelaxation } from './solve-relaxation.ts';
import { startProgramme } from './start-programme.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/** Steps to solve the relaxation, to search, and how many patterns at most are looked at. */
const EFFORT = { relax: 100_000, search: 60_000, patterns: 200 } as const;

/**
 * Pieces that can be cut together from a length too short for all of them, in strips right across it.
 *
 * Looks for the most cloth in pieces among the patterns that waste least, and strips of one kind.
 * What is found can always be cut. With one kind it is the most there can be; with several it is no
 * less cloth than the best of one kind alone, but not proven to be the most.
 *
 * @param kinds each fits the roll one way at least
 * @param cloth usable width, and length left for strips, mm
 * @returns pieces of each kind
 */
export function fitPieces(
  kinds: readonly PieceKind[],
  cloth: { readonly usable: number; readonly room: number },
): readonly number[] {
  const { usable, room } = cloth;
  const levels = listLevels(kinds, usable);
  const problem = { usable, levels, demand: kinds.map((kind) => kind.count) };
  const areas = kinds.map((kind) => (kind.across * kind.along) / 100);
  const alone = bestAlone(problem, areas, room);
  const patterns = listCandidates(problem).filter(
    ({ level }) => (levels[level]?.height ?? 0) <= room + ROOM_SLACK,
  );
  const columns = [
    ...patterns.map(({ level, counts }) => ({
      cost: 0,
      gives: [...counts, -(levels[level]?.height ?? 0)],
    })),
    ...areas.map((cost, at) => ({ cost, gives: kinds.map((_, kind) => (kind === at ? 1 : 0)) })),
  ];
  const countPlaced = (times: ArrayLike<number>) =>
    kinds.map((kind, at) => {
      const held = patterns.reduce(
        (sum, { counts }, name) => sum + (counts[at] ?? 0) * (times[name] ?? 0),
        0,
      );
      return Math.min(kind.count, held);
    });
  const leftOut = (placed: readonly number[]) =>
    kinds.reduce((sum, kind, at) => sum + (kind.count - (placed[at] ?? 0)) * (areas[at] ?? 0), 0);
  const { times } = searchWhole(
    startProgramme(columns, [...problem.demand, -(room + ROOM_SLACK)]),
    {
      names: patterns.length,
      sets: [],
      target: leftOut(alone),
      step: 1e-3,
      bound: 0,
      budget: { steps: EFFORT.search },
      measure: (found) => leftOut(countPlaced(found)),
    },
  );
  return times === undefined ? alone : countPlaced(times);
}

/** Strips of one kind in either way, and those that waste least of all. */
function listCandidates(problem: StripProblem): readonly Pattern[] {
  const relaxation = solveRelaxation(problem, { steps: EFFORT.relax });
  const single = problem.demand.flatMap((_, kind) =>
    problem.levels.map((_, level) => fillAlone(problem, level, kind)),
  );
  const used = relaxation.basis.flatMap(({ pattern }) => (pattern === undefined ? [] : [pattern]));
  const excess = Math.max(...problem.levels.map(({ height }) => height));
  const few = listFew(problem, relaxation, { excess, most: EFFORT.patterns });
  return [...few, ...used, ...single.filter(({ counts }) => counts.some((count) => count > 0))];
}
