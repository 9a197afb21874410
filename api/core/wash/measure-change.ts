import { studentQuantile } from './student-quantile.ts';

/** Dimensional change of specimens of one cloth, in percent; negative is shrinkage. */
export interface MeasuredChange {
  readonly n: number;
  readonly mean: number;
  /** Sample standard deviation; absent with one specimen. */
  readonly sd?: number;
  /** Student t interval of the mean. */
  readonly interval?: { readonly low: number; readonly high: number };
  /** Interval for one new piece of the same cloth. */
  readonly next?: { readonly low: number; readonly high: number };
}

/**
 * Dimensional change in percent: 100·(after − before)/before (AATCC TM135, ISO 5077; negative is
 * shrinkage).
 *
 * @param before and after, both above 0 in one unit
 *
 * @example
 * dimensionalChange(250, 240) // => -4
 */
export function dimensionalChange(before: number, after: number): number {
  return (100 * (after - before)) / before;
}

/**
 * Mean, spread and intervals of dimensional changes.
 *
 * The interval of the mean is mean ± t·s/√n, that for one new piece mean ± t·s·√(1 + 1/n), with
 * Student's t of n − 1 degrees of freedom. One specimen tells nothing of the spread: no interval.
 *
 * @param changes percent, at least one; their order does not matter
 * @param confidence share between 0 and 1
 *
 * @example
 * measureChange([-4], 0.95) // => { n: 1, mean: -4 }
 */
export function measureChange(changes: readonly number[], confidence: number): MeasuredChange {
  const n = changes.length;
  // Sorted, so that the order of specimens cannot show in the last digits.
  const sorted = changes.toSorted((one, other) => one - other);
  const mean = sorted.reduce((sum, change) => sum + change, 0) / n;
  if (n === 1) return { n, mean };
  const squares = sorted.reduce((sum, change) => sum + (change - mean) ** 2, 0);
  const sd = Math.sqrt(squares / (n - 1));
  const t = studentQuantile(n - 1, confidence);
  const around = (half: number) => ({ low: mean - half, high: mean + half });
  return {
    n,
    mean,
    sd,
    interval: around((t * sd) / Math.sqrt(n)),
    next: around(t * sd * Math.sqrt(1 + 1 / n)),
  };
}

/**
 * By how much reading a ruler blurs one dimensional change, percent points: both readings are off
 * by up to half a division either way, evenly spread, and errors add as root sum of squares:
 * 100·u/A·√(1 + (B/A)²) with u = division/√12.
 *
 * @param division smallest mark of the ruler, in the unit of the lengths
 *
 * @example
 * readingError({ before: 10, after: 10, division: 0.125 }) // => 0.510310363
 */
export function readingError(reading: {
  readonly before: number;
  readonly after: number;
  readonly division: number;
}): number {
  const unsure = reading.division / Math.sqrt(12);
  const ratio = reading.after / reading.before;
  return ((100 * unsure) / reading.before) * Math.sqrt(1 + ratio ** 2);
}
