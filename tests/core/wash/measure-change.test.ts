import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dimensionalChange, measureChange, readingError } from '#core/wash/measure-change.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const changes = fc.array(fc.double({ min: -10, max: 5, noNaN: true }), {
  minLength: 2,
  maxLength: 12,
});

describe('dimensionalChange', () => {
  test('dimensionalChange is negative when the cloth shrank, positive when it grew', () => {
    expect(dimensionalChange(10, 9.6)).toBeCloseTo(-4, 12);
    expect(dimensionalChange(10, 10.1)).toBeCloseTo(1, 12);
    expect(dimensionalChange(10, 10)).toBe(0);
  });

  test('dimensionalChange does not depend on the unit', () => {
    const lengths = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(lengths, lengths, (before, after) => {
        const inches = dimensionalChange(before, after);
        const metric = dimensionalChange(before * 2.54, after * 2.54);
        return Math.abs(inches - metric) < 1e-9 * Math.max(1, Math.abs(inches));
      }),
    );
  });
});

describe('measureChange', () => {
  test('measureChange of one specimen gives neither spread nor interval', () => {
    expect(measureChange([-4], 0.95)).toEqual({ n: 1, mean: -4 });
  });

  test('measureChange of equal specimens gives an interval of no width', () => {
    const { sd, interval, next } = measureChange([-3, -3, -3], 0.95);
    expect(sd).toBe(0);
    expect(interval).toEqual({ low: -3, high: -3 });
    expect(next).toEqual({ low: -3, high: -3 });
  });

  test('measureChange does not depend on the order of specimens, to the last digit', () => {
    fc.assert(
      fc.property(changes, (given) => {
        const one = measureChange(deepFreeze(given), 0.95);
        expect(measureChange(given.toReversed(), 0.95)).toEqual(one);
      }),
    );
  });

  test('measureChange widens with the confidence, and more for one piece than for the mean', () => {
    fc.assert(
      fc.property(changes, (given) => {
        const widths = [0.9, 0.95, 0.99].map((confidence) => {
          const { interval, next } = measureChange(given, confidence);
          const width = (one: typeof next) => (one === undefined ? -1 : one.high - one.low);
          expect(width(next)).toBeGreaterThanOrEqual(width(interval));
          return width(interval);
        });
        expect(widths).toEqual(widths.toSorted((one, other) => one - other));
      }),
    );
  });
});

describe('readingError', () => {
  test('readingError is 0.27724 points for 250 to 240 mm read to u = 0.5 mm', () => {
    // Propagation of two independent readings, recomputed by hand: 100·0.5/250·√(1 + 0.96²).
    const division = 0.5 * Math.sqrt(12);
    expect(readingError({ before: 250, after: 240, division })).toBeCloseTo(0.27724, 5);
  });

  test('readingError of an eighth on ten inches is half a percent point, so 0.1 % is out of reach', () => {
    const error = readingError({ before: 10, after: 9.6, division: 0.125 });
    expect(error).toBeCloseTo(0.50021, 5);
  });

  test('readingError halves when the marks are twice as far apart', () => {
    const near = readingError({ before: 10, after: 9.6, division: 0.125 });
    const far = readingError({ before: 20, after: 19.2, division: 0.125 });
    expect(far).toBeCloseTo(near / 2, 12);
  });
});
