import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logBeta, regularizedBeta } from '#core/wash/regularized-beta.ts';

const shapes = fc.double({ min: 0.5, max: 100, noNaN: true });
// Parts of 4096, so that 1 − x is exact.
const shares = fc.integer({ min: 0, max: 4096 }).map((part) => part / 4096);
const beta = (x: number, a: number, b: number) =>
  regularizedBeta(x, { a, b, scale: logBeta(a, b) });

describe('logBeta', () => {
  test('logBeta(1/2, 1/2) is ln π and logBeta(2, 3) is ln 1/12, as any table says', () => {
    expect(logBeta(0.5, 0.5)).toBeCloseTo(Math.log(Math.PI), 12);
    expect(logBeta(2, 3)).toBeCloseTo(Math.log(1 / 12), 12);
  });

  test('logBeta is the same both ways round', () => {
    fc.assert(
      fc.property(shapes, shapes, (a, b) => Math.abs(logBeta(a, b) - logBeta(b, a)) < 1e-11),
    );
  });
});

describe('regularizedBeta', () => {
  test('regularizedBeta is 0 and 1 at and beyond its ends', () => {
    expect([-1, 0, 1, 2].map((x) => beta(x, 2, 3))).toEqual([0, 0, 1, 1]);
  });

  test('regularizedBeta(x; 1, b) is 1 − (1 − x)^b', () => {
    fc.assert(
      fc.property(shares, shapes, (x, b) => {
        expect(beta(x, 1, b)).toBeCloseTo(1 - (1 - x) ** b, 11);
      }),
    );
  });

  test('regularizedBeta(x; a, b) and (1 − x; b, a) sum to one', () => {
    fc.assert(
      fc.property(shares, shapes, shapes, (x, a, b) => {
        expect(beta(x, a, b) + beta(1 - x, b, a)).toBeCloseTo(1, 10);
      }),
    );
  });

  test('regularizedBeta never falls as x grows', () => {
    fc.assert(
      fc.property(shares, shares, shapes, shapes, (x, y, a, b) => {
        const [low, high] = x < y ? [x, y] : [y, x];
        return beta(low, a, b) <= beta(high, a, b) + 1e-12;
      }),
    );
  });
});
