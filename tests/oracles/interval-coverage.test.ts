import { describe, expect, test } from 'vitest';
import { measureChange } from '#core/wash/measure-change.ts';

/** Evenly spread numbers from a linear congruence (Numerical Recipes' constants, from memory). */
function startNoise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(1664525, state) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Normal numbers by Box and Muller. */
const normal = (noise: () => number) =>
  Math.sqrt(-2 * Math.log(noise())) * Math.cos(2 * Math.PI * noise());

const TRIALS = 20_000;
const [TRUTH, SPREAD] = [-4, 0.8];

describe('measureChange', () => {
  test.each([2, 3, 5, 10])(
    'measureChange of %i normal specimens holds the truth in 94 to 96 of 100 trials at 0.95',
    (n) => {
      const noise = startNoise(1000 + n);
      const draw = () => TRUTH + SPREAD * normal(noise);
      let [held, next] = [0, 0];
      for (let trial = 0; trial < TRIALS; trial += 1) {
        const found = measureChange(Array.from({ length: n }, draw), 0.95);
        const piece = draw();
        if (found.interval && found.interval.low <= TRUTH && TRUTH <= found.interval.high)
          held += 1;
        if (found.next && found.next.low <= piece && piece <= found.next.high) next += 1;
      }
      for (const share of [held / TRIALS, next / TRIALS]) {
        expect(share).toBeGreaterThan(0.94);
        expect(share).toBeLessThan(0.96);
      }
    },
  );
});
