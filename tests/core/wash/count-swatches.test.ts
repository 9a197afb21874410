import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countSwatches, USUAL_SPREAD } from '#core/wash/count-swatches.ts';

/** Student t, two-sided 95 %, by degrees of freedom: any table of statistics. */
const T95 = { 1: 12.7062, 2: 4.3027, 3: 3.1824, 4: 2.7764, 5: 2.5706 } as const;

describe('countSwatches', () => {
  it('takes the least number whose printed t brings the interval within the half width', () => {
    const half = (n: 2 | 3 | 4 | 5 | 6) =>
      T95[(n - 1) as 1 | 2 | 3 | 4 | 5] * USUAL_SPREAD * Math.sqrt(1 + 1 / n);
    for (const n of [3, 4, 5, 6] as const) {
      expect(countSwatches(half(n) + 0.001, 0.95)).toBe(n);
      expect(countSwatches(half(n) - 0.001, 0.95)).toBe(n + 1);
    }
    expect(countSwatches(half(2) + 0.001, 0.95)).toBe(2);
  });

  it('gives nothing where the spread of the cloth itself is wider than asked', () => {
    expect(countSwatches(1.9 * USUAL_SPREAD, 0.95)).toBeUndefined();
  });

  it('never asks for more swatches of a wider half width', () => {
    const half = fc.double({ min: 0.2, max: 10, noNaN: true });
    fc.assert(
      fc.property(half, half, (one, other) => {
        const narrow = countSwatches(Math.min(one, other), 0.95) ?? 31;
        const wide = countSwatches(Math.max(one, other), 0.95) ?? 31;
        expect(wide).toBeLessThanOrEqual(narrow);
      }),
    );
  });
});
