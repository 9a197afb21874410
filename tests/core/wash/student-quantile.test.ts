import { describe, expect, test } from 'vitest';
import { studentQuantile } from '#core/wash/student-quantile.ts';

describe('studentQuantile', () => {
  test('studentQuantile of one degree is tan(π/2·confidence), the quantile of Cauchy', () => {
    for (const confidence of [0.1, 0.5, 0.9, 0.95, 0.99]) {
      const exact = Math.tan((Math.PI / 2) * confidence);
      expect(studentQuantile(1, confidence) / exact).toBeCloseTo(1, 10);
    }
  });

  test('studentQuantile of two degrees has a closed form', () => {
    for (const confidence of [0.5, 0.9, 0.95, 0.99]) {
      const exact = confidence * Math.sqrt(2 / (1 - confidence ** 2));
      expect(studentQuantile(2, confidence) / exact).toBeCloseTo(1, 10);
    }
  });

  test('studentQuantile falls with the freedom and grows with the confidence', () => {
    const freedoms = [1, 2, 3, 5, 10, 30, 59, 194];
    const row = freedoms.map((freedom) => studentQuantile(freedom, 0.95));
    expect(row).toEqual(row.toSorted((one, other) => other - one));
    expect(studentQuantile(4, 0.9)).toBeLessThan(studentQuantile(4, 0.99));
  });

  test('studentQuantile of many degrees nears the 1.959964 of the normal distribution', () => {
    expect(studentQuantile(100_000, 0.95)).toBeCloseTo(1.959964, 3);
  });
});
