import { studentQuantile } from './student-quantile.ts';

/** Standard deviation of one cloth's swatches, percent points: common practice, no source. */
export const USUAL_SPREAD = 0.5;

/** More specimens than this nobody washes. */
const MOST = 30;

/**
 * How many swatches, each way, would bring the interval for one new piece to at most a given half
 * width: the least n with t(n − 1)·s·√(1 + 1/n) ≤ half width.
 *
 * @param halfWidth percent points, above 0
 * @param confidence share between 0 and 1
 * @param spread standard deviation to expect, percent points
 * @returns 2 to 30; nothing where even thirty would not do
 *
 * @example
 * countSwatches(2, 0.95) // => 4
 */
export function countSwatches(
  halfWidth: number,
  confidence: number,
  spread: number = USUAL_SPREAD,
): number | undefined {
  for (let count = 2; count <= MOST; count += 1) {
    const t = studentQuantile(count - 1, confidence);
    if (t * spread * Math.sqrt(1 + 1 / count) <= halfWidth) return count;
  }
  return undefined;
}
