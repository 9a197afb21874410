import { raiseToStep } from './common-step.ts';
import { listPatterns } from './list-patterns.ts';
import { searchStrips } from './search-strips.ts';
import type { Relaxation } from './solve-relaxation.ts';
import {
  type Budget,
  lengthOf,
  type Pattern,
  type StripList,
  type StripProblem,
} from './strip-plan.ts';

/** A plan, and how short any could be; mm. */
export interface BoundedPlan {
  readonly strips: StripList;
  readonly length: number;
  readonly bound: number;
}

/** Steps, and how many patterns at most are searched at once. */
export interface ProofEffort {
  readonly list: number;
  readonly search: number;
  readonly patterns: number;
}

/** Lengths closer than this are one and the same where heights have no step in common, mm. */
const ALIKE = 0.001;

/**
 * Closes the gap between a plan and a bound from below: asks for a plan no longer than the bound and a
 * little, then twice as much, and so on. A pattern that is longer than what it is worth by more than
 * what is asked for can be in no such plan (reduced-cost bound), so the first questions are about few
 * patterns and quickly answered; each answer "none" raises the bound, and the first plan found is the
 * shortest.
 *
 * @param relaxation solved to the end
 * @param step every length is a multiple of it, mm; 0 where there is none
 */
export function proveStrips(
  problem: StripProblem,
  relaxation: Relaxation,
  asked: {
    readonly from: BoundedPlan;
    readonly step: number;
    readonly effort: ProofEffort;
    /** Steps left for this and what comes after it; written over. */
    readonly allowance: Budget;
  },
): BoundedPlan {
  const { step, effort, allowance } = asked;
  const apart = step === 0 ? ALIKE : step;
  let { strips, length, bound } = asked.from;
  let reach = Math.max(apart, raiseToStep((length - bound) / 8, step));
  const listing = { steps: Math.min(effort.list, allowance.steps / 3) };
  const budget = { steps: Math.min(effort.search, allowance.steps - listing.steps) };
  const given = listing.steps + budget.steps;
  while (length > bound + (step === 0 ? 2 * ALIKE : 1e-6)) {
    const target = Math.min(length, bound + reach) - apart;
    const patterns = listPatterns(problem, {
      prices: relaxation.prices,
      excess: target - relaxation.bound + 1e-6,
      most: effort.patterns,
      budget: listing,
    });
    if (patterns === undefined) break;
    allowance.steps -= stepsToWrite(problem, patterns);
    const search = { patterns, target, step: apart, bound, budget };
    const found = searchStrips(problem, relaxation, search);
    if (found.strips !== undefined) {
      strips = found.strips;
      length = lengthOf(problem.levels, strips);
    }
    if (!found.isComplete) break;
    bound = found.strips === undefined ? target + step : length;
    reach *= 2;
  }
  allowance.steps -= given - listing.steps - budget.steps;
  return { strips, length, bound };
}

/** Steps that go into writing out a programme of so many patterns before any of it is searched. */
export function stepsToWrite({ demand }: StripProblem, patterns: readonly Pattern[]): number {
  return (patterns.length * demand.length * (demand.length + 8)) / 32;
}
