import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoursePoint, clampLimit, fitCourse } from '#core/wash/fit-course.ts';
import { shrinkAfter } from '#core/wash/follow-course.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const points: fc.Arbitrary<readonly CoursePoint[]> = fc.uniqueArray(
  fc.record({
    washes: fc.integer({ min: 1, max: 50 }),
    shrink: fc.double({ min: -0.1, max: 0.3, noNaN: true }),
    weight: fc.integer({ min: 1, max: 6 }),
  }),
  { minLength: 2, maxLength: 8, selector: (point) => point.washes },
);

describe('fitCourse', () => {
  test('fitCourse of one wash count passes through it with the usual rate and claims no error', () => {
    const course = fitCourse([{ washes: 3, shrink: 0.06, weight: 2 }], 0.5);
    expect(course.rate).toBe(0.5);
    expect(shrinkAfter(course, 3)).toBeCloseTo(0.06, 12);
    expect(course).not.toHaveProperty('error');
  });

  test('fitCourse finds the course that made the points, with no error', () => {
    const limits = fc.double({ min: 0.01, max: 0.3, noNaN: true });
    const rates = fc.double({ min: 0.02, max: 0.94, noNaN: true });
    fc.assert(
      fc.property(limits, rates, (limit, rate) => {
        const made = [1, 2, 3, 5, 10].map((washes) => ({
          washes,
          shrink: shrinkAfter({ limit, rate }, washes),
          weight: 1,
        }));
        const found = fitCourse(made, 0.3);
        expect(found.limit).toBeCloseTo(limit, 5);
        expect(found.rate).toBeCloseTo(rate, 5);
        expect(found.error).toBeLessThan(1e-6);
      }),
      { numRuns: 50 },
    );
  });

  test('fitCourse does not depend on the order of the points', () => {
    fc.assert(
      fc.property(points, (given) => {
        const one = fitCourse(deepFreeze(given), 0.3);
        const other = fitCourse(given.toReversed(), 0.3);
        expect(other.error).toBeCloseTo(one.error ?? 0, 9);
      }),
      { numRuns: 50 },
    );
  });

  test('fitCourse counts a point of weight two as the point given twice', () => {
    const heavy = [
      { washes: 1, shrink: 0.05, weight: 2 },
      { washes: 3, shrink: 0.055, weight: 1 },
      { washes: 6, shrink: 0.08, weight: 1 },
    ];
    const twice = [
      { washes: 1, shrink: 0.05, weight: 1 },
      ...heavy.map((p) => ({ ...p, weight: 1 })),
    ];
    const one = fitCourse(heavy, 0.3);
    const other = fitCourse(twice, 0.3);
    expect(one.limit).toBeCloseTo(other.limit, 6);
    expect(one.rate).toBeCloseTo(other.rate, 6);
  });

  test('fitCourse keeps every course within what cloth can do, however wild the points', () => {
    const wild = fitCourse(
      [
        { washes: 1, shrink: 0, weight: 1 },
        { washes: 2, shrink: 0.5, weight: 1 },
      ],
      0.3,
    );
    expect(wild.limit).toBe(0.9);
    expect(fitCourse([{ washes: 1, shrink: -0.99, weight: 1 }], 0.9).limit).toBe(-1);
    fc.assert(
      fc.property(points, (given) => {
        const { limit, rate } = fitCourse(given, 0.3);
        return limit >= -1 && limit <= 0.9 && rate > 0 && rate <= 0.95;
      }),
      { numRuns: 50 },
    );
  });

  test('fitCourse of cloth that does not change is a course of nothing', () => {
    const still = [1, 2, 3].map((washes) => ({ washes, shrink: 0, weight: 1 }));
    expect(fitCourse(still, 0.3)).toMatchObject({ limit: 0, error: 0 });
  });

  test('fitCourse without a point throws, since no caller may ask that', () => {
    expect(() => fitCourse([], 0.3)).toThrow('at least one point');
  });
});

describe('clampLimit', () => {
  test('clampLimit leaves what cloth can do and cuts off the rest', () => {
    expect([-3, -0.2, 0, 0.3, 0.95].map(clampLimit)).toEqual([-1, -0.2, 0, 0.3, 0.9]);
  });
});
