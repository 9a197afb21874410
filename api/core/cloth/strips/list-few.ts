import { listPatterns } from './list-patterns.ts';
import type { Relaxation } from './solve-relaxation.ts';
import type { Pattern, StripProblem } from './strip-plan.ts';

/** Steps of one listing. */
const LISTING = 10_000;

/**
 * The patterns that waste least, no more than some number: the excess is halved until they are few.
 *
 * @param asked greatest excess of a pattern over its worth, mm, and how many there may be
 */
export function listFew(
  problem: StripProblem,
  { prices }: Pick<Relaxation, 'prices'>,
  { excess, most }: { readonly excess: number; readonly most: number },
): readonly Pattern[] {
  for (let less = excess; less > 1e-3; less /= 2) {
    const search = { prices, excess: less, most, budget: { steps: LISTING } };
    const patterns = listPatterns(problem, search);
    if (patterns !== undefined) return patterns;
  }
  return [];
}
