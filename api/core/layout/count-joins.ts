import type { Joins } from './list-joins.ts';

/** Joins of one print with itself, beside their moments over all ways to lay the same blocks. */
export interface JoinCount {
  readonly observed: number;
  readonly expected: number;
  readonly variance: number;
  /** Absent where nothing varies. */
  readonly z?: number;
}

/**
 * Join counts of like neighbours under non-free sampling (Moran 1948; Cliff and Ord 1981, from
 * memory): with J joins, k blocks of the print among n, D = Σ d(d − 1) over the cells' joins d, and
 * falling factorials n₍ₘ₎,
 * E = J·k₍₂₎/n₍₂₎ and Var = E + D·k₍₃₎/n₍₃₎ + (J(J − 1) − D)·k₍₄₎/n₍₄₎ − E².
 *
 * @param shows for each place whether the print lies there
 *
 * @example
 * const { observed, expected } = countJoins({ pairs: [[0, 1], [1, 2]], degrees: [1, 2, 1] }, [true, true, false]); [observed, expected] // => [1, 0.6666666666666666]
 */
export function countJoins({ pairs, degrees }: Joins, shows: readonly boolean[]): JoinCount {
  let observed = 0;
  for (const pair of pairs) if (shows[pair[0]] && shows[pair[1]]) observed += 1;
  const blocks = shows.filter(Boolean).length;
  const joins = pairs.length;
  const sharing = degrees.reduce((sum, degree) => sum + degree * (degree - 1), 0);
  const chance = (places: number) => fall(blocks, places) / Math.max(1, fall(shows.length, places));
  const expected = joins * chance(2);
  const variance =
    expected + sharing * chance(3) + (joins * (joins - 1) - sharing) * chance(4) - expected ** 2;
  if (variance < 1e-9) return { observed, expected, variance: 0 };
  return { observed, expected, variance, z: (observed - expected) / Math.sqrt(variance) };
}

/** n·(n − 1)·…, so many factors. */
function fall(from: number, factors: number): number {
  let product = 1;
  for (let factor = 0; factor < factors; factor += 1) product *= Math.max(0, from - factor);
  return product;
}
