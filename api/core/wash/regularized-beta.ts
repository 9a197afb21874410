/** Coefficients of Lanczos' approximation with g = 7 (published by Godfrey; from memory). */
const LANCZOS: readonly number[] = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

function logGamma(x: number): number {
  const base = x - 1;
  const shifted = base + 7.5;
  const sum = LANCZOS.reduce((total, coefficient, index) =>
    index === 0 ? coefficient : total + coefficient / (base + index),
  );
  return 0.5 * Math.log(2 * Math.PI) + (base + 0.5) * Math.log(shifted) - shifted + Math.log(sum);
}

/**
 * Natural logarithm of the beta function B(a, b) = Γ(a)Γ(b)/Γ(a + b).
 *
 * @param a and b, 0.5 or more
 *
 * @example
 * logBeta(2, 2) // => -1.791759469228
 */
export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/**
 * The regularized incomplete beta function I(x; a, b), by the continued fraction of Abramowitz and
 * Stegun 26.5.8 (from memory), reckoned by Lentz' method from the side where it converges fast.
 *
 * @param x 0 to 1
 * @param shape a and b above 0, and `scale` = logBeta(a, b), which callers reckon once
 * @returns 0 to 1
 *
 * @example
 * regularizedBeta(0.5, { a: 2, b: 2, scale: logBeta(2, 2) }) // => 0.5
 */
export function regularizedBeta(
  x: number,
  shape: { readonly a: number; readonly b: number; readonly scale: number },
): number {
  const { a, b, scale } = shape;
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - regularizedBeta(1 - x, { a: b, b: a, scale });
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - scale) / a;
  return front * continuedFraction(x, a, b);
}

function continuedFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const guard = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / guard(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m < 500; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guard(1 + even * d);
    c = guard(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guard(1 + odd * d);
    c = guard(1 + odd / c);
    const change = d * c;
    result *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return result;
}
