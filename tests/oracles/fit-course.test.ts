import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CoursePoint, fitCourse } from '#core/wash/fit-course.ts';

/** Least error over a plain grid of limits and rates. */
function searchGrid(points: readonly CoursePoint[]): number {
  const weight = points.reduce((sum, point) => sum + point.weight, 0);
  let least = Number.POSITIVE_INFINITY;
  for (let rate = 0.005; rate < 0.95; rate += 0.005) {
    for (let limit = -0.2; limit <= 0.9; limit += 0.002) {
      let sum = 0;
      for (const point of points) {
        const gap = point.shrink - limit * (1 - rate ** point.washes);
        sum += point.weight * gap * gap;
      }
      if (sum < least) least = sum;
    }
  }
  return Math.sqrt(least / weight);
}

describe('fitCourse', () => {
  test('fitCourse is never worse than the best of 100,000 courses on a grid, and close to it', () => {
    const points = fc.uniqueArray(
      fc.record({
        washes: fc.integer({ min: 1, max: 20 }),
        shrink: fc.double({ min: 0, max: 0.15, noNaN: true }),
        weight: fc.integer({ min: 1, max: 5 }),
      }),
      { minLength: 2, maxLength: 6, selector: (point) => point.washes },
    );
    fc.assert(
      fc.property(points, (given) => {
        const found = fitCourse(given, 0.3).error ?? Number.NaN;
        const grid = searchGrid(given);
        expect(found).toBeLessThanOrEqual(grid + 1e-9);
        expect(grid - found).toBeLessThan(0.002);
      }),
      { numRuns: 25 },
    );
  });
});
