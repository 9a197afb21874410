/** Heights are looked at to a millionth of a millimetre: every binary part of an inch down to 1/64 is whole then. */
const PARTS = 1_000_000;

/** A step finer than this, mm, tells nothing. */
const FINEST = 0.001;

/**
 * The greatest length that every height is a whole multiple of, so that the length of any plan of
 * strips is one too.
 *
 * @param heights mm, above 0
 * @returns mm; 0 where there is none of a thousandth of a millimetre or more
 *
 * @example
 * commonStep([215.9, 254]) // => 12.7
 * commonStep([254 / 3, 254]) // => 0
 */
export function commonStep(heights: readonly number[]): number {
  const parts = heights.map((height) => Math.round(height * PARTS));
  const isWhole = parts.every((part, at) => Math.abs(part - (heights[at] ?? 0) * PARTS) < 1e-3);
  const step = parts.reduce(divideOut, 0) / PARTS;
  return isWhole && step >= FINEST ? step : 0;
}

/** Euclid's greatest common divisor. */
function divideOut(one: number, other: number): number {
  return other === 0 ? one : divideOut(other, one % other);
}

/**
 * The least multiple of a step that is not below a length; with no step, the length itself.
 *
 * @example
 * raiseToStep(26, 12.7) // => 38.099999999999994
 * raiseToStep(26, 0) // => 26
 */
export function raiseToStep(length: number, step: number): number {
  return step === 0 ? length : Math.ceil(length / step - 1e-6) * step;
}
