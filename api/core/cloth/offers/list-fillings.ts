import { fillAlone } from '../strips/best-alone.ts';
import { type Level, listLevels, type PieceKind, ROOM_SLACK } from '../strips/list-levels.ts';
import { listPatterns } from '../strips/list-patterns.ts';
import type { Pattern, StripProblem } from '../strips/strip-plan.ts';
import { type Filling, keepLargest } from './keep-largest.ts';

/** What a sheet can be cut into. */
export interface SheetFillings {
  readonly levels: readonly Level[];
  readonly fillings: readonly Filling[];
  /** False where there were too many to list: then some are missing. */
  readonly isComplete: boolean;
}

const LIMITS = {
  patterns: 600,
  patternSteps: 30_000,
  fillings: 800,
  fillingSteps: 60_000,
} as const;

/**
 * The ways to cut one sheet into strips across its width, none of which gives as much of every kind as
 * another.
 *
 * @param kinds pieces wanted; those too large for the sheet are left out of it
 */
export function listFillings(
  kinds: readonly PieceKind[],
  sheet: { readonly width: number; readonly length: number },
): SheetFillings {
  const levels = listLevels(kinds, sheet.width).filter(
    ({ height }) => height <= sheet.length + ROOM_SLACK,
  );
  const demand = kinds.map((kind) => kind.count);
  const problem = { usable: sheet.width, levels, demand };
  const patterns = listPatterns(problem, {
    prices: demand.map(() => 0),
    excess: Number.POSITIVE_INFINITY,
    most: LIMITS.patterns,
    budget: { steps: LIMITS.patternSteps },
  });
  const few = patterns ?? listAlone(problem);
  const found = combine(few.toReversed(), { levels, demand, length: sheet.length });
  return {
    levels,
    fillings: keepLargest([...found.fillings.values()]),
    isComplete: patterns !== undefined && found.isComplete,
  };
}

/** Strips of one kind alone: what is left to try where there are too many of all. */
function listAlone(problem: StripProblem): readonly Pattern[] {
  return problem.levels.flatMap((_, level) =>
    problem.demand
      .map((_, kind) => fillAlone(problem, level, kind))
      .filter(({ counts }) => counts.some((count) => count > 0)),
  );
}

/** Every full set of strips that fits the length, tallest first. */
function combine(
  patterns: readonly Pattern[],
  sheet: {
    readonly levels: readonly Level[];
    readonly demand: readonly number[];
    readonly length: number;
  },
): { readonly fillings: ReadonlyMap<string, Filling>; readonly isComplete: boolean } {
  const fillings = new Map<string, Filling>();
  const chosen: Pattern[] = [];
  const heights = patterns.map(({ level }) => sheet.levels[level]?.height ?? 0);
  const lowest = Math.min(...heights);
  let steps: number = LIMITS.fillingSteps;
  const visit = (from: number, room: number): void => {
    steps -= 1;
    if (steps <= 0 || fillings.size > LIMITS.fillings) return;
    let isFull = true;
    for (let at = from; at < patterns.length && room >= lowest - ROOM_SLACK; at += 1) {
      const pattern = patterns[at];
      const height = heights[at] ?? 0;
      if (pattern === undefined || height > room + ROOM_SLACK) continue;
      isFull = false;
      chosen.push(pattern);
      visit(at, room - height);
      chosen.pop();
    }
    if (isFull && chosen.length > 0) {
      const filling = fillingOf(chosen, sheet.demand);
      fillings.set(filling.counts.join(), filling);
    }
  };
  if (patterns.length > 0) visit(0, sheet.length);
  return { fillings, isComplete: steps > 0 && fillings.size <= LIMITS.fillings };
}

function fillingOf(chosen: readonly Pattern[], demand: readonly number[]): Filling {
  const counts = demand.map((wanted, kind) =>
    Math.min(
      wanted,
      chosen.reduce((sum, pattern) => sum + (pattern.counts[kind] ?? 0), 0),
    ),
  );
  return { counts, strips: chosen.map((pattern) => ({ pattern, times: 1 })) };
}
