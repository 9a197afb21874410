/**
 * A row of places shared by weight so that each print comes at even distances: every place goes to the
 * print that lags most behind its share so far, ties to the earlier.
 *
 * @param weights none negative, sum above 0
 * @returns for each place the position of its print among the weights
 *
 * @example
 * spacePrints([2, 1], 6) // => [0, 1, 0, 0, 1, 0]
 */
export function spacePrints(weights: readonly number[], places: number): readonly number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const lag = weights.map(() => 0);
  return Array.from({ length: places }, () => {
    let best = 0;
    for (const [at, weight] of weights.entries()) {
      lag[at] = (lag[at] ?? 0) + weight / total;
      if ((lag[at] ?? 0) > (lag[best] ?? 0) + 1e-9) best = at;
    }
    lag[best] = (lag[best] ?? 0) - 1;
    return best;
  });
}
