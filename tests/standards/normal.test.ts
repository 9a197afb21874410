/**
 * The normal distribution against tables.
 * - Φ(1) = 0.841345, Φ(1.96) = 0.975002, Φ(2) = 0.977250, Φ(3) = 0.998650: any table. From memory.
 * - 68.27, 95.45 and 99.73 % within one, two and three standard deviations: any handbook. From memory.
 * - erf(0.5) = 0.5204998778, erf(1) = 0.8427007929, erf(2) = 0.9953222650: Abramowitz and Stegun,
 *   table 7.1. From memory.
 */
import { describe, expect, test } from 'vitest';
import { chanceWithin } from '#core/sewing/normal-distribution.ts';

describe('chanceWithin', () => {
  test.each([
    [1, 0.841345],
    [1.96, 0.975002],
    [2, 0.97725],
    [3, 0.99865],
  ])('chanceWithin(%d, 1) is 2·%d - 1 (tables, from memory)', (z, phi) => {
    expect(chanceWithin(z, 1)).toBeCloseTo(2 * phi - 1, 5);
  });

  test.each([
    [1, 68.27],
    [2, 95.45],
    [3, 99.73],
  ])('chanceWithin(%d standard deviations) is %d %% (handbooks, from memory)', (z, percent) => {
    expect(100 * chanceWithin(z * 1.5875, 1.5875)).toBeCloseTo(percent, 2);
  });

  test.each([
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
  ])('chanceWithin(%d·√2, 1) is erf = %d (Abramowitz and Stegun, from memory)', (z, erf) => {
    expect(chanceWithin(z * Math.SQRT2, 1)).toBeCloseTo(erf, 10);
  });
});
