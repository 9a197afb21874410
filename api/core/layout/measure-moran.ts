import type { Joins } from './list-joins.ts';

/** Moran's I beside its moments over all ways to lay the same values. */
export interface Moran {
  readonly moran: number;
  readonly expected: number;
  /** Absent with fewer than four places. */
  readonly variance?: number;
  readonly z?: number;
}

/**
 * Moran's I of values on a grid (Moran 1950): n/W · Σ w·zᵢ·zⱼ / Σ z², z a value less the mean, w 1 for
 * both directions of each join, W their sum; expected −1/(n − 1). The variance under randomisation is
 * that of Cliff and Ord 1981 (from memory), with S₁ = 2W, S₂ = 4Σd² and b = n·Σz⁴/(Σz²)².
 * Only for values that have an order: never for prints by number.
 *
 * @returns nothing where all values are the same or no cells touch
 *
 * @example
 * measureMoran({ pairs: [[0, 1], [1, 2]], degrees: [1, 2, 1] }, [1, 0, 1])?.moran // => -1
 */
export function measureMoran(joins: Joins, values: readonly number[]): Moran | undefined {
  const { pairs } = joins;
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const apart = values.map((value) => value - mean);
  const squares = apart.reduce((sum, z) => sum + z ** 2, 0);
  if (squares < 1e-12 || pairs.length === 0) return undefined;
  const products = pairs.reduce(
    (sum, [one, other]) => sum + (apart[one] ?? 0) * (apart[other] ?? 0),
    0,
  );
  const moran = ((n / pairs.length) * products) / squares;
  const expected = -1 / (n - 1);
  if (n < 4) return { moran, expected };
  const fourths = apart.reduce((sum, z) => sum + z ** 4, 0);
  const variance = varyMoran(joins, n, (n * fourths) / squares ** 2);
  if (variance < 1e-12) return { moran, expected, variance: 0 };
  return { moran, expected, variance, z: (moran - expected) / Math.sqrt(variance) };
}

function varyMoran({ pairs, degrees }: Joins, n: number, peak: number): number {
  const weight = 2 * pairs.length;
  const first = 2 * weight;
  const second = 4 * degrees.reduce((sum, degree) => sum + degree ** 2, 0);
  const flat = n * ((n ** 2 - 3 * n + 3) * first - n * second + 3 * weight ** 2);
  const peaked = peak * ((n ** 2 - n) * first - 2 * n * second + 6 * weight ** 2);
  return (flat - peaked) / ((n - 1) * (n - 2) * (n - 3) * weight ** 2) - 1 / (n - 1) ** 2;
}
