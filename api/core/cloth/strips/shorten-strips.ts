import { listFew } from './list-few.ts';
import { type BoundedPlan, stepsToWrite } from './prove-strips.ts';
import { searchStrips } from './search-strips.ts';
import type { Relaxation } from './solve-relaxation.ts';
import { spendSteps } from './spend-steps.ts';
import { type Budget, lengthOf, type StripProblem } from './strip-plan.ts';

/** Parts of the gap between bound and plan at which a shorter plan is asked for. */
const PARTS = [1 / 4, 1 / 2, 3 / 4, 1] as const;

/**
 * Looks for a shorter plan among the most promising patterns alone, where proving was too much.
 *
 * @param relaxation solved to the end
 * @param effort steps for each of four questions, and how many patterns at most
 */
export function shortenStrips(
  problem: StripProblem,
  relaxation: Relaxation,
  asked: {
    readonly from: BoundedPlan;
    readonly effort: { readonly search: number; readonly patterns: number };
    /** Steps left for this and what comes after it; written over. */
    readonly allowance: Budget;
  },
): BoundedPlan {
  let { from } = asked;
  const { effort, allowance } = asked;
  for (const part of PARTS) {
    if (allowance.steps <= 0) break;
    const target = from.bound + (from.length - from.bound) * part - 1e-3;
    const patterns = listFew(problem, relaxation, {
      excess: target - relaxation.bound,
      most: effort.patterns,
      allowance,
    });
    allowance.steps -= stepsToWrite(problem, patterns);
    const { strips } = spendSteps(allowance, effort.search, (budget) => {
      const search = { patterns, target, step: 1e-3, bound: from.bound, budget };
      return searchStrips(problem, relaxation, search);
    });
    if (strips !== undefined) from = { ...from, strips, length: lengthOf(problem.levels, strips) };
  }
  return from;
}
