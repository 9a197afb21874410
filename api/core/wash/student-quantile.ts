import { logBeta, regularizedBeta } from './regularized-beta.ts';

/**
 * The two-sided quantile of Student's t: the t that a share `confidence` of the distribution lies
 * within, as printed in tables of statistics.
 *
 * The distribution is P(|T| ≤ t) = 1 − I(ν/(ν + t²); ν/2, 1/2) with I the regularized incomplete
 * beta function (Abramowitz and Stegun 26.7.1, from memory); t is found by bisection.
 *
 * @param freedom degrees of freedom, whole, 1 or more
 * @param confidence share between 0 and 1
 * @returns t, above 0, to about 10 digits
 *
 * @example
 * studentQuantile(4, 0.95) // => 2.776445105198
 */
export function studentQuantile(freedom: number, confidence: number): number {
  let low = 0;
  let high = 1;
  while (coverage(high, freedom) < confidence) high *= 2;
  for (let step = 0; step < 100 && high - low > 1e-13 * high; step += 1) {
    const middle = (low + high) / 2;
    if (coverage(middle, freedom) < confidence) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** P(|T| ≤ t). */
function coverage(t: number, freedom: number): number {
  const scale = logBeta(freedom / 2, 0.5);
  return 1 - regularizedBeta(freedom / (freedom + t * t), { a: freedom / 2, b: 0.5, scale });
}
