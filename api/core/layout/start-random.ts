/** Draws a whole number from 0 up to, not including, the number given. */
export type Draw = (below: number) => number;

/**
 * Starts a row of numbers that look random and are the same for ever from the same seed
 * (mulberry32, Tommy Ettinger, public domain).
 *
 * @param seed whole, 0 to 4 294 967 295
 *
 * @example
 * const draw = startRandom(7); [draw(10), draw(10), draw(10)] // => [0, 0, 9]
 */
export function startRandom(seed: number): Draw {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * below);
  };
}
