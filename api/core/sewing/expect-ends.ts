import type { Mismatch } from './predict-mismatch.ts';

/** Quantiles of the normal distribution: half of all errors lie within the first, 95 in 100 within the second. */
export const QUANTILES = { half: 0.674489750196, most: 1.95996398454 } as const;

/** What to expect of the row ends of a whole quilt; lengths in millimetres. */
export interface EndsExpected {
  readonly half: number;
  readonly most: number;
  readonly mostFromOneEnd: number;
  /** Ends that may miss when rows are joined from the middle outwards. */
  readonly ends: number;
  /** Ends likely to be off by more than the ease. */
  readonly unpick: number;
  readonly unpickFromOneEnd: number;
}

/**
 * By how much row ends are likely to miss, and how many are to be unpicked.
 *
 * A normal error is within 0.6745 standard deviations half of the time and within 1.96 of them 95 times in
 * 100 (quantiles as in any table of the normal distribution). A seam between two rows that is joined from
 * the middle outwards has two ends that may miss; from one end it has one, which misses by more.
 * Expected number = ends × chance of being beyond the ease.
 *
 * @param rows of the quilt
 */
export function expectEnds(rows: number, mismatch: Mismatch): EndsExpected {
  const seams = rows - 1;
  return {
    half: QUANTILES.half * mismatch.fromCentre,
    most: QUANTILES.most * mismatch.fromCentre,
    mostFromOneEnd: QUANTILES.most * mismatch.fromOneEnd,
    ends: 2 * seams,
    unpick: 2 * seams * (1 - mismatch.withinFromCentre),
    unpickFromOneEnd: seams * (1 - mismatch.withinFromOneEnd),
  };
}
