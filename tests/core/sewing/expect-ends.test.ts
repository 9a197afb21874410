import fc from 'fast-check';
import { probit } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { expectEnds, QUANTILES } from '#core/sewing/expect-ends.ts';
import { chanceWithin } from '#core/sewing/normal-distribution.ts';
import { predictMismatch } from '#core/sewing/predict-mismatch.ts';

const trueness = fc.record({
  seam: fc.double({ min: 0, max: 10, noNaN: true }),
  cut: fc.double({ min: 0, max: 10, noNaN: true }),
  ease: fc.double({ min: 0, max: 50, noNaN: true }),
});
const count = fc.integer({ min: 1, max: 60 });

describe('expectEnds', () => {
  test('its quantiles are those of the normal distribution (another library, and our own distribution)', () => {
    // simple-statistics approximates to 4.5e-4 (Abramowitz and Stegun 26.2.23).
    expect(QUANTILES.half).toBeCloseTo(probit(0.75), 2);
    expect(QUANTILES.most).toBeCloseTo(probit(0.975), 2);
    expect(chanceWithin(QUANTILES.half, 1)).toBeCloseTo(0.5, 10);
    expect(chanceWithin(QUANTILES.most, 1)).toBeCloseTo(0.95, 10);
  });

  test('expectEnds counts two ends a seam from the middle and one from an end', () => {
    const sure = { withinFromCentre: 0.9, withinFromOneEnd: 0.7 };
    const mismatch = { rowDeviation: 4, fromCentre: 4, fromOneEnd: 6, ...sure };
    const { ends, unpick, unpickFromOneEnd, half } = expectEnds(9, mismatch);
    expect(ends).toBe(16);
    expect(unpick).toBeCloseTo(1.6, 12);
    expect(unpickFromOneEnd).toBeCloseTo(2.4, 12);
    expect(half).toBeCloseTo(2.698, 3);
  });

  test('expectEnds: half is less than most, the middle misses by less, and no more is unpicked than there is', () => {
    fc.assert(
      fc.property(count, count, trueness, (columns, rows, how) => {
        const expected = expectEnds(rows, predictMismatch(columns, how));
        expect(expected.half).toBeLessThanOrEqual(expected.most);
        expect(expected.most).toBeLessThanOrEqual(expected.mostFromOneEnd);
        expect(expected.unpick).toBeLessThanOrEqual(expected.ends);
        expect(expected.unpick).toBeGreaterThanOrEqual(0);
        expect(expected.unpickFromOneEnd).toBeLessThanOrEqual(expected.ends / 2);
      }),
    );
  });
});
