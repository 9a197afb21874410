import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { predictMismatch } from '#core/sewing/predict-mismatch.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const trueness = fc
  .record({
    seam: fc.double({ min: 0.01, max: 5, noNaN: true }),
    cut: fc.double({ min: 0.01, max: 5, noNaN: true }),
    ease: fc.double({ min: 0, max: 30, noNaN: true }),
  })
  .map(deepFreeze);
const columns = fc.integer({ min: 1, max: 60 });

describe('predictMismatch', () => {
  test('predictMismatch(1 column) has the error of one cut', () => {
    expect(predictMismatch(1, { seam: 3, cut: 2, ease: 10 }).rowDeviation).toBe(2);
  });

  test('predictMismatch(2 columns, cut exact) has the join twice: 2ε', () => {
    expect(predictMismatch(2, { seam: 3, cut: 0, ease: 10 }).rowDeviation).toBe(6);
  });

  test('predictMismatch(4 columns, seam 1.5, cut 1) adds squares: 4·3·2.25 + 4·1 = 31', () => {
    const { rowDeviation } = predictMismatch(4, { seam: 1.5, cut: 1, ease: 10 });
    expect(rowDeviation).toBeCloseTo(Math.sqrt(31), 12);
  });

  test('predictMismatch of somebody without error always meets', () => {
    const mismatch = predictMismatch(9, { seam: 0, cut: 0, ease: 0 });
    expect(mismatch).toMatchObject({ rowDeviation: 0, withinFromCentre: 1, withinFromOneEnd: 1 });
  });

  test('predictMismatch joined from the middle misses √2 times less than from one end', () => {
    fc.assert(
      fc.property(columns, trueness, (count, true_) => {
        const { rowDeviation, fromOneEnd, fromCentre, ...chances } = predictMismatch(count, true_);
        expect(fromOneEnd / fromCentre).toBeCloseTo(Math.SQRT2, 12);
        expect(fromOneEnd).toBeCloseTo(Math.hypot(rowDeviation, rowDeviation), 9);
        expect(chances.withinFromCentre).toBeGreaterThanOrEqual(chances.withinFromOneEnd);
      }),
    );
  });

  test('predictMismatch grows with the columns, and a wider ease forgives more', () => {
    fc.assert(
      fc.property(columns, trueness, (count, true_) => {
        const less = predictMismatch(count, true_);
        const more = predictMismatch(count + 1, true_);
        expect(more.rowDeviation).toBeGreaterThan(less.rowDeviation);
        const easier = predictMismatch(count, { ...true_, ease: true_.ease + 1 });
        expect(easier.withinFromCentre).toBeGreaterThanOrEqual(less.withinFromCentre);
      }),
    );
  });
});
