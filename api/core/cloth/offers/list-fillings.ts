import { listAlone } from '../strips/list-alone.ts';
import { type Level, listLevels, type PieceKind, ROOM_SLACK } from '../strips/list-levels.ts';
import { listPatterns } from '../strips/list-patterns.ts';
import { spendSteps } from '../strips/spend-steps.ts';
import type { Budget, Pattern } from '../strips/strip-plan.ts';
import { type Filling, keepLargest } from './keep-largest.ts';

/** What a sheet can be cut into. */
export interface SheetFillings {
  readonly levels: readonly Level[];
  readonly fillings: readonly Filling[];
  /** False where there were too many to list: then some are missing. */
  readonly isComplete: boolean;
}

/** Steps for one sheet, where nobody says less. */
const USUAL_STEPS = 200_000;

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
 * @param most fillings that may be listed
 * @param allowance steps left for this and whatever comes after it; written over
 */
export function listFillings(
  kinds: readonly PieceKind[],
  sheet: { readonly width: number; readonly length: number },
  {
    most = LIMITS.fillings,
    allowance = { steps: USUAL_STEPS },
  }: { readonly most?: number; readonly allowance?: Budget } = {},
): SheetFillings {
  const levels = listLevels(kinds, sheet.width).filter(
    ({ height }) => height <= sheet.length + ROOM_SLACK,
  );
  const demand = kinds.map((kind) => kind.count);
  const problem = { usable: sheet.width, levels, demand };
  const patterns = spendSteps(allowance, LIMITS.patternSteps, (budget) =>
    listPatterns(problem, {
      prices: demand.map(() => 0),
      excess: Number.POSITIVE_INFINITY,
      most: LIMITS.patterns,
      budget,
    }),
  );
  // Too many to list: strips of one kind alone are left to try.
  const few = patterns ?? listAlone(problem);
  // Each filling is held against every other.
  const fewest = Math.floor(
    Math.min(LIMITS.fillings, most, 4 * Math.sqrt(Math.max(0, allowance.steps))),
  );
  const found = spendSteps(allowance, LIMITS.fillingSteps, (budget) =>
    combine(few.toReversed(), { levels, demand, length: sheet.length, most: fewest, budget }),
  );
  allowance.steps -= levels.length + found.fillings.size ** 2 / 16;
  return {
    levels,
    fillings: keepLargest([...found.fillings.values()]),
    isComplete: patterns !== undefined && found.isComplete,
  };
}

/** Every full set of strips that fits the length, tallest first. */
function combine(
  patterns: readonly Pattern[],
  sheet: {
    readonly levels: readonly Level[];
    readonly demand: readonly number[];
    readonly length: number;
    readonly most: number;
    readonly budget: Budget;
  },
): { readonly fillings: ReadonlyMap<string, Filling>; readonly isComplete: boolean } {
  const fillings = new Map<string, Filling>();
  const chosen: Pattern[] = [];
  const heights = patterns.map(({ level }) => sheet.levels[level]?.height ?? 0);
  const lowest = Math.min(...heights);
  const { budget, most } = sheet;
  const visit = (from: number, room: number): void => {
    budget.steps -= 1;
    if (budget.steps <= 0 || fillings.size > most) return;
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
  return { fillings, isComplete: budget.steps > 0 && fillings.size <= most };
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
