/**
 * Skew of a square marked on a swatch, from its two diagonals: 100·2·(AC − BD)/(AC + BD), percent
 * (AATCC TM179, option by diagonals; formula from memory). Zero is square; the sign tells which way
 * it leans.
 *
 * @param ac and bd diagonals after the wash, both above 0 in one unit
 *
 * @example
 * measureSkew(26, 25.5) // => 1.941747573
 */
export function measureSkew(ac: number, bd: number): number {
  return (200 * (ac - bd)) / (ac + bd);
}

/**
 * How far one side of a square block leans out of true for a given skew: side·|skew|/100.
 *
 * @param skew percent
 * @param side any unit
 * @returns the unit of the side
 *
 * @example
 * leanOf(2, 8.5) // => 0.17
 */
export function leanOf(skew: number, side: number): number {
  return (Math.abs(skew) / 100) * side;
}
