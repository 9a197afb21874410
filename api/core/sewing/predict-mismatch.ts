import { chanceWithin } from './normal-distribution.ts';

/** How true a person works: one standard deviation each, mm. */
export interface Trueness {
  readonly seam: number;
  readonly cut: number;
  /** How far a row end may be off and still wash out. */
  readonly ease: number;
}

export interface Mismatch {
  /** Standard deviation of one row's length, mm. */
  readonly rowDeviation: number;
  /** Standard deviation of the step at the far end when rows are joined from one end, mm. */
  readonly fromOneEnd: number;
  /** The same at each end when they are joined from the middle outwards, mm. */
  readonly fromCentre: number;
  /** Chance that a row end is within the ease, 0 to 1. */
  readonly withinFromOneEnd: number;
  readonly withinFromCentre: number;
}

/**
 * How far the ends of two joined rows are likely to miss each other.
 *
 * A join that is off by ε moves the length of its row by 2ε, a cut by its own error; independent
 * errors add as root sum of squares: sd(row) = √(4(n − 1)σs² + n·σc²). Two rows differ with √2
 * times that. Joined from one end, all of it lands at the other. Joined from a matched middle
 * outwards, each end gathers the errors of half a row only, which is half the variance:
 * √2·sd(row)/√2 = sd(row) at each end, a little more than the truth since the middle itself is
 * matched. (Not half of √2·sd(row): the halves err apart from each other.) The chance follows from the normal distribution. A steady error, such as an allowance that is
 * always scant, adds up straight and is not counted here.
 *
 * @param columns blocks in a row
 *
 * @example
 * predictMismatch(1, { seam: 3, cut: 2, ease: 10 }).rowDeviation // => 2
 */
export function predictMismatch(columns: number, trueness: Trueness): Mismatch {
  const variance = 4 * (columns - 1) * trueness.seam ** 2 + columns * trueness.cut ** 2;
  const rowDeviation = Math.sqrt(variance);
  const fromOneEnd = Math.SQRT2 * rowDeviation;
  const fromCentre = rowDeviation;
  return {
    rowDeviation,
    fromOneEnd,
    fromCentre,
    withinFromOneEnd: chanceWithin(trueness.ease, fromOneEnd),
    withinFromCentre: chanceWithin(trueness.ease, fromCentre),
  };
}
