import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseThrough, shrinkAfter, shrinkLeft } from '#core/wash/follow-course.ts';

const courses = fc.record({
  limit: fc.double({ min: -0.3, max: 0.9, noNaN: true }),
  rate: fc.double({ min: 0, max: 0.95, noNaN: true }),
});
const counts = fc.integer({ min: 1, max: 50 });

describe('shrinkAfter', () => {
  test('shrinkAfter({ limit: 0.07, rate: 2/7 }, 1) is the 5 % of the published pair', () => {
    expect(shrinkAfter({ limit: 0.07, rate: 2 / 7 }, 1)).toBeCloseTo(0.05, 12);
  });

  test('shrinkAfter is nothing before the first wash', () => {
    fc.assert(fc.property(courses, (course) => Math.abs(shrinkAfter(course, 0)) === 0));
  });

  test('shrinkAfter never goes back and never passes its limit', () => {
    fc.assert(
      fc.property(courses, counts, (course, washes) => {
        const now = Math.abs(shrinkAfter(course, washes));
        const then = Math.abs(shrinkAfter(course, washes + 1));
        return now <= then && then <= Math.abs(course.limit) + 1e-15;
      }),
    );
  });
});

describe('courseThrough', () => {
  test('courseThrough gives a course that passes through the point', () => {
    const shrinks = fc.double({ min: -0.1, max: 0.3, noNaN: true });
    const rates = fc.double({ min: 0, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(shrinks, counts, rates, (shrink, washes, rate) => {
        const course = courseThrough(shrink, washes, rate);
        return Math.abs(shrinkAfter(course, washes) - shrink) < 1e-12;
      }),
    );
  });
});

describe('shrinkLeft', () => {
  test('shrinkLeft after no prewash is the whole shrink', () => {
    fc.assert(
      fc.property(courses, counts, (course, washes) => {
        const left = shrinkLeft(course, 0, washes);
        return Math.abs(left - shrinkAfter(course, washes)) < 1e-12;
      }),
    );
  });

  test('shrinkLeft with what the prewash took makes up the whole course', () => {
    fc.assert(
      fc.property(courses, counts, counts, (course, prewashes, washes) => {
        const kept = 1 - shrinkAfter(course, prewashes);
        const after = kept * (1 - shrinkLeft(course, prewashes, washes));
        return Math.abs(after - (1 - shrinkAfter(course, prewashes + washes))) < 1e-12;
      }),
    );
  });

  test('shrinkLeft is never more than without the prewash, nor is growth', () => {
    fc.assert(
      fc.property(courses, counts, counts, (course, prewashes, washes) => {
        const left = shrinkLeft(course, prewashes, washes);
        return Math.abs(left) <= Math.abs(shrinkAfter(course, washes)) + 1e-12;
      }),
    );
  });
});
