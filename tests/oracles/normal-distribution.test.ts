/**
 * The chance within ±limit against two other implementations of the normal distribution: jstat
 * (erf by Chebyshev coefficients) and simple-statistics (erf by a fitted polynomial, off by 1.2e-7 at most).
 */
import jStat from 'jstat';
import { errorFunction } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { chanceWithin } from '#core/sewing/normal-distribution.ts';

const HUNDREDTHS = Array.from({ length: 1001 }, (_, index) => index / 100);

describe('chanceWithin', () => {
  test('chanceWithin agrees with jstat to 12 digits from 0 to 10 standard deviations', () => {
    for (const z of HUNDREDTHS) {
      const other = 2 * jStat.normal.cdf(z, 0, 1) - 1;
      expect(Math.abs(chanceWithin(z, 1) - other)).toBeLessThan(1e-12);
    }
  });

  test('chanceWithin agrees with simple-statistics to the six digits that its polynomial gives', () => {
    for (const z of HUNDREDTHS) {
      const other = errorFunction(z / Math.SQRT2);
      expect(Math.abs(chanceWithin(z * 4, 4) - other)).toBeLessThan(2e-7);
    }
  });

  test('chanceWithin agrees with adding up the bell curve itself', () => {
    const bell = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    for (const limit of [0.3, 1, 1.7, 2.5, 4]) {
      const steps = 20_000;
      const width = (2 * limit) / steps;
      const area = Array.from({ length: steps }, (_, index) =>
        bell(-limit + (index + 0.5) * width),
      ).reduce((sum, height) => sum + height * width, 0);
      expect(chanceWithin(limit, 1)).toBeCloseTo(area, 8);
    }
  });
});
