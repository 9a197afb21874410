import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceWithin } from '#core/sewing/normal-distribution.ts';

const spread = fc.double({ min: 0.01, max: 50, noNaN: true });
const reach = fc.double({ min: 0, max: 100, noNaN: true });

describe('chanceWithin', () => {
  test('chanceWithin(0, 1) is nothing, and everything where nothing varies', () => {
    expect(chanceWithin(0, 1)).toBe(0);
    expect(chanceWithin(0, 0)).toBe(1);
    expect(chanceWithin(5, 0)).toBe(1);
  });

  test('chanceWithin lies between 0 and 1, and nears 1 far out', () => {
    fc.assert(
      fc.property(reach, spread, (limit, deviation) => {
        const chance = chanceWithin(limit, deviation);
        expect(chance >= 0 && chance <= 1).toBe(true);
      }),
    );
    expect(chanceWithin(1e6, 1)).toBe(1);
    expect(chanceWithin(8.4, 1)).toBeGreaterThan(1 - 1e-15);
  });

  test('chanceWithin grows with the limit and falls with the deviation', () => {
    fc.assert(
      fc.property(reach, spread, (limit, deviation) => {
        const chance = chanceWithin(limit, deviation);
        expect(chanceWithin(limit + 0.1, deviation)).toBeGreaterThanOrEqual(chance - 1e-15);
        expect(chanceWithin(limit, deviation + 0.1)).toBeLessThanOrEqual(chance + 1e-15);
      }),
    );
  });

  test('chanceWithin depends on the quotient alone', () => {
    fc.assert(
      fc.property(reach, spread, (limit, deviation) => {
        expect(chanceWithin(limit * 25.4, deviation * 25.4)).toBeCloseTo(
          chanceWithin(limit, deviation),
          12,
        );
      }),
    );
  });
});
