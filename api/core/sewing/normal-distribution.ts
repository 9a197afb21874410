/**
 * Chance that a normally distributed error lies within ±limit.
 *
 * P(|x| ≤ limit) = erf(limit / (sd·√2)), with the error function summed as its series
 * erf(z) = 2/√π · e^(−z²) · Σ 2ⁿ z^(2n+1) / (1·3·5…(2n+1)), which has positive terms only and so
 * loses no digits (Abramowitz and Stegun 7.1.6, from memory).
 *
 * @param limit 0 or more
 * @param deviation standard deviation in the same unit, 0 or more
 * @returns 0 to 1; 1 where there is no deviation
 *
 * @example
 * chanceWithin(1, 1) // => 0.682689492137
 */
export function chanceWithin(limit: number, deviation: number): number {
  if (deviation === 0) return 1;
  const z = limit / (deviation * Math.SQRT2);
  if (z > 6) return 1;
  let term = z;
  let sum = z;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= (2 * z * z) / (2 * n + 1);
    sum += term;
  }
  return Math.min(1, (2 / Math.sqrt(Math.PI)) * Math.exp(-z * z) * sum);
}
