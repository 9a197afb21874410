import { listPatterns } from './list-patterns.ts';
import type { Relaxation } from './solve-relaxation.ts';
import { spendSteps } from './spend-steps.ts';
import type { Budget, Pattern, StripProblem } from './strip-plan.ts';

/** Steps of one listing. */
const LISTING = 10_000;

/**
 * The patterns that waste least, no more than some number: the excess is halved until they are few.
 *
 * @param asked greatest excess of a pattern over its worth, mm, how many there may be, and the steps left
 * for this and what comes after it, written over
 * @returns none where the steps run out
 */
export function listFew(
  problem: StripProblem,
  { prices }: Pick<Relaxation, 'prices'>,
  {
    excess,
    most,
    allowance,
  }: { readonly excess: number; readonly most: number; readonly allowance: Budget },
): readonly Pattern[] {
  for (let less = excess; less > 1e-3; less /= 2) {
    if (allowance.steps <= 0) break;
    const patterns = spendSteps(allowance, LISTING, (budget) =>
      listPatterns(problem, { prices, excess: less, most, budget }),
    );
    if (patterns !== undefined) return patterns;
  }
  return [];
}
