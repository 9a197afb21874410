import jStat from 'jstat';
import { sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { measureChange } from '#core/wash/measure-change.ts';
import { logBeta, regularizedBeta } from '#core/wash/regularized-beta.ts';
import { studentQuantile } from '#core/wash/student-quantile.ts';

// jstat ends its continued fraction at 3e-7, so that is how far it can judge.
const freedoms = [...Array.from({ length: 30 }, (_, index) => index + 1), 40, 59, 60, 120, 194];
const confidences = [0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.999];

describe('studentQuantile', () => {
  test.each(confidences)(
    'studentQuantile at %d agrees with jstat at every freedom',
    (confidence) => {
      for (const freedom of freedoms) {
        const theirs = jStat.studentt.inv(0.5 + confidence / 2, freedom);
        expect(studentQuantile(freedom, confidence) / theirs).toBeCloseTo(1, 6);
      }
    },
  );

  test('studentQuantile holds just its confidence by the distribution of jstat', () => {
    for (const freedom of freedoms) {
      for (const confidence of confidences) {
        const t = studentQuantile(freedom, confidence);
        expect(2 * jStat.studentt.cdf(t, freedom) - 1).toBeCloseTo(confidence, 7);
      }
    }
  });
});

describe('regularizedBeta', () => {
  test('regularizedBeta agrees with the F distribution of jstat', () => {
    // P(F ≤ f) with m and n degrees is I(mf/(mf + n); m/2, n/2).
    for (const m of [1, 2, 3, 7, 20]) {
      for (const n of [1, 2, 5, 11, 60]) {
        for (const f of [0.05, 0.4, 1, 2.5, 9]) {
          const shape = { a: m / 2, b: n / 2, scale: logBeta(m / 2, n / 2) };
          const ours = regularizedBeta((m * f) / (m * f + n), shape);
          expect(ours).toBeCloseTo(jStat.centralF.cdf(f, m, n), 7);
        }
      }
    }
  });
});

describe('measureChange', () => {
  test('measureChange spreads as simple-statistics says', () => {
    const changes = [-4.2, -3.1, -5.05, -4.4, -3.9, -4.75];
    const { sd } = measureChange(changes, 0.95);
    expect(sd).toBeCloseTo(sampleStandardDeviation(changes), 12);
  });
});
