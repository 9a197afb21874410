import type { Budget } from './strip-plan.ts';

/**
 * Does a piece of work with some of the steps that are left for all of it; what it does not use stays.
 *
 * @param allowance written over; steps below 0 are a debt of work that could not be cut short
 * @param most steps for this piece
 *
 * @example
 * spendSteps({ steps: 100 }, 60, (budget) => budget.steps) // => 60
 * spendSteps({ steps: 20 }, 60, (budget) => budget.steps) // => 20
 */
export function spendSteps<Result>(
  allowance: Budget,
  most: number,
  work: (budget: Budget) => Result,
): Result {
  const given = Math.max(0, Math.min(most, allowance.steps));
  const budget = { steps: given };
  const result = work(budget);
  allowance.steps -= given - budget.steps;
  return result;
}
