import fc from 'fast-check';
import { describe, test } from 'vitest';
import { settleSandwich, type WashLayer } from '#core/wash/settle-sandwich.ts';

/** The rest point by bisection of Σ wᵢ·g(kᵢ − k), which knows nothing of sorting. */
function bisect(layers: readonly WashLayer[], buckling: number): number {
  let low = Math.min(...layers.map(({ rate }) => rate));
  let high = Math.max(...layers.map(({ rate }) => rate));
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    let force = 0;
    for (const { rate, weight } of layers) {
      const stretch = rate - middle;
      force += weight * (stretch > 0 ? stretch : buckling * stretch);
    }
    if (force > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('settleSandwich', () => {
  test('settleSandwich agrees with bisection on 10,000 random sandwiches to 1e-9', () => {
    const layers = fc.array(
      fc.record({
        rate: fc.double({ min: -0.1, max: 0.3, noNaN: true }),
        weight: fc.double({ min: 1, max: 2000, noNaN: true }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const bucklings = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(layers, bucklings, (sandwich, buckling) => {
        const gap = settleSandwich(sandwich, buckling) - bisect(sandwich, buckling);
        return Math.abs(gap) < 1e-9;
      }),
      { numRuns: 10_000 },
    );
  });
});
