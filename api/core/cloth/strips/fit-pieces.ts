import { bestAlone } from './best-alone.ts';
import type { Dictionary } from './dictionary.ts';
import { USUAL_STEPS } from './least-strips.ts';
import { listAlone } from './list-alone.ts';
import { listFew } from './list-few.ts';
import { listLevels, type PieceKind, ROOM_SLACK } from './list-levels.ts';
import { searchWhole } from './search-whole.ts';
import { solveRelaxation } from './solve-relaxation.ts';
import { spendSteps } from './spend-steps.ts';
import { startProgramme } from './start-programme.ts';
import type { Budget, Pattern, StripProblem } from './strip-plan.ts';

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
 * @param allowance steps that are left for this and whatever comes after it; written over
 * @returns pieces of each kind
 */
export function fitPieces(
  kinds: readonly PieceKind[],
  cloth: { readonly usable: number; readonly room: number },
  allowance: Budget = { steps: USUAL_STEPS },
): readonly number[] {
  const places = kinds.flatMap((kind, at) => (kind.count > 0 ? [at] : []));
  const wanted = kinds.filter((kind) => kind.count > 0);
  if (wanted.length === 0 || cloth.room <= 0) return kinds.map(() => 0);
  const placed = fitWanted(wanted, cloth, allowance);
  return kinds.map((_, at) => placed[places.indexOf(at)] ?? 0);
}

function fitWanted(
  kinds: readonly PieceKind[],
  { usable, room }: { readonly usable: number; readonly room: number },
  allowance: Budget,
): readonly number[] {
  const levels = listLevels(kinds, usable);
  const problem = { usable, levels, demand: kinds.map((kind) => kind.count) };
  const areas = kinds.map((kind) => (kind.across * kind.along) / 100);
  const alone = bestAlone(problem, areas, room);
  if (kinds.length === 1) return alone;
  const heightOf = (pattern: Pattern) => levels[pattern.level]?.height ?? 0;
  const patterns = listCandidates(problem, allowance).filter(
    (one) => heightOf(one) <= room + ROOM_SLACK,
  );
  const choice: Choice = { kinds, areas, patterns, heights: patterns.map(heightOf), room };
  const { times } = spendSteps(allowance, EFFORT.search, (budget) =>
    searchWhole(startChoice(choice), {
      names: patterns.length,
      sets: [],
      target: leftOut(choice, alone),
      step: 1e-3,
      bound: 0,
      budget,
      measure: (found) =>
        sumOver(choice.heights, found) <= room + ROOM_SLACK
          ? leftOut(choice, countPlaced(choice, found))
          : undefined,
    }),
  );
  return times === undefined ? alone : countPlaced(choice, times);
}

interface Choice {
  readonly kinds: readonly PieceKind[];
  readonly areas: readonly number[];
  readonly patterns: readonly Pattern[];
  readonly heights: readonly number[];
  readonly room: number;
}

/** A programme: each piece lies in a strip or costs its area, and the strips fit the room. */
function startChoice({ kinds, areas, patterns, heights, room }: Choice): Dictionary {
  const strips = patterns.map(({ counts }, name) => ({
    cost: 0,
    gives: [...counts, -(heights[name] ?? 0)],
  }));
  const left = areas.map((cost, at) => ({
    cost,
    gives: kinds.map((_, kind) => (kind === at ? 1 : 0)),
  }));
  return startProgramme([...strips, ...left], [...kinds.map((kind) => kind.count), -room]);
}

function countPlaced({ kinds, patterns }: Choice, times: ArrayLike<number>): readonly number[] {
  return kinds.map((kind, at) => {
    const held = patterns.map(({ counts }) => counts[at] ?? 0);
    return Math.min(kind.count, sumOver(held, times));
  });
}

/** Area of the pieces that are not placed. */
function leftOut({ kinds, areas }: Choice, placed: readonly number[]): number {
  return kinds.reduce(
    (sum, kind, at) => sum + (kind.count - (placed[at] ?? 0)) * (areas[at] ?? 0),
    0,
  );
}

function sumOver(values: readonly number[], times: ArrayLike<number>): number {
  return values.reduce((sum, value, at) => sum + value * (times[at] ?? 0), 0);
}

/** Strips of one kind in either way, and those that waste least of all. */
function listCandidates(problem: StripProblem, allowance: Budget): readonly Pattern[] {
  const relaxation = spendSteps(allowance, EFFORT.relax, (budget) =>
    solveRelaxation(problem, budget),
  );
  const used = relaxation.basis.flatMap(({ pattern }) => (pattern === undefined ? [] : [pattern]));
  const excess = Math.max(...problem.levels.map(({ height }) => height));
  const few = listFew(problem, relaxation, { excess, most: EFFORT.patterns, allowance });
  return [...few, ...used, ...listAlone(problem)];
}
