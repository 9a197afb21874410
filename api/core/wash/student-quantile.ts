import { logBeta, regularizedBeta } from './regularized-beta.ts';

/**
 * The two-sided quantile of Student's t: the t that a share `confidence` of the distribution lies
 * within, as printed in tables of statistics.
 *
 * The distribution is P(|T| ≤ t) = 1 − I(ν/(ν + t²); ν/2, 1/2) with I the regularized incomplete
 * beta function (Abramowitz and Stegun 26.7.1, from memory); t is found by Newton's steps, halving
 * the bracket where a step would leave it.
 *
 * @param freedom degrees of freedom, whole, 1 or more
 * @param confidence share between 0 and 1
 * @returns t, above 0, to about 10 digits
 *
 * @example
 * studentQuantile(4, 0.95) // => 2.776445105198
 */
export function studentQuantile(freedom: number, confidence: number): number {
  const key = `${freedom} ${confidence}`;
  const known = found.get(key) ?? findQuantile(freedom, confidence);
  found.set(key, known);
  return known;
}

/** What was found before: an answer asks for the same few over and over, and a table has no more. */
const found = new Map<string, number>();

function findQuantile(freedom: number, confidence: number): number {
  const scale = logBeta(freedom / 2, 0.5);
  const coverage = (t: number) =>
    1 - regularizedBeta(freedom / (freedom + t * t), { a: freedom / 2, b: 0.5, scale });
  let low = 0;
  let high = 2;
  while (coverage(high) < confidence) high *= 4;
  let t = high / 2;
  for (let step = 0; step < 100 && high - low > 1e-13 * high; step += 1) {
    const gap = coverage(t) - confidence;
    if (gap < 0) low = t;
    else high = t;
    const next = t - gap / density(t, freedom, scale);
    const isInside = next > low && next < high;
    if (isInside && Math.abs(next - t) < 1e-13 * t) return next;
    t = isInside ? next : (low + high) / 2;
  }
  return t;
}

/** Slope of the coverage: twice the density of Student's t. */
function density(t: number, freedom: number, scale: number): number {
  const body = ((freedom + 1) / 2) * Math.log1p((t * t) / freedom);
  return 2 * Math.exp(-body - scale - 0.5 * Math.log(freedom));
}
