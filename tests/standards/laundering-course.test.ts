import { describe, expect, test } from 'vitest';
import { findFabric } from '#core/tables/fabrics.ts';
import { fitCourse } from '#core/wash/fit-course.ts';
import { courseThrough, shrinkAfter } from '#core/wash/follow-course.ts';
import { dimensionalChange } from '#core/wash/measure-change.ts';

// One cotton flannel, 112 by 44.5 in, washed hot and dried six times: a home measurement published on
// a craft blog (quilttoit.com, 2017-11-05), read. Low authority, but a series of six.
const LENGTHS = [106.5, 105.5, 104, 103.75, 103.75, 103.75];
const WIDTHS = [43.5, 43.25, 43.25, 43.25, 43.25, 43.25];

const shrinks = (before: number, after: readonly number[]) =>
  after.map((side, index) => ({
    washes: index + 1,
    shrink: -dimensionalChange(before, side) / 100,
    weight: 1,
  }));

describe('fitCourse', () => {
  test('fitCourse follows the published flannel lengthwise to a third of a percent point', () => {
    const course = fitCourse(shrinks(112, LENGTHS), 2 / 7);
    expect(course.limit).toBeCloseTo(0.074, 4);
    expect(course.rate).toBeCloseTo(0.379, 3);
    // Root mean square error of the fit, percent points: 0.3 in on 112. At worst, after the second
    // wash, the course is off by 0.53 points.
    expect(100 * (course.error ?? 1)).toBeCloseTo(0.265, 3);
    const gaps = shrinks(112, LENGTHS).map(
      ({ washes, shrink }) => 100 * Math.abs(shrinkAfter(course, washes) - shrink),
    );
    expect(Math.max(...gaps)).toBeCloseTo(0.534, 3);
  });

  test('fitCourse follows the same flannel crosswise to a twentieth of a percent point', () => {
    const course = fitCourse(shrinks(44.5, WIDTHS), 2 / 7);
    expect(course.limit).toBeCloseTo(0.0283, 4);
    expect(course.rate).toBeCloseTo(0.194, 3);
    expect(100 * (course.error ?? 1)).toBeCloseTo(0.04, 3);
  });
});

describe('shrinkAfter', () => {
  // "A fabric which shrinks 5 % in first washing may shrink 7 % before reaching stability"
  // (fibre2fashion.com, industry article 5988), read, low authority: r = 1 − 5/7.
  test('shrinkAfter of 5 % first and 7 % in the end leaves r = 0.2857, the rate of the table', () => {
    const rate = 1 - 5 / 7;
    expect(rate).toBeCloseTo(0.2857, 4);
    expect(findFabric('flannel').rate).toBeCloseTo(rate, 12);
    const course = courseThrough(5, 1, rate);
    expect(course.limit).toBeCloseTo(7, 12);
    const after = [2, 3, 5, 10].map((washes) => shrinkAfter(course, washes));
    [6.4286, 6.8367, 6.9867, 7].forEach((value, index) => {
      expect(after[index]).toBeCloseTo(value, 4);
    });
  });

  // The same article: often three launderings are needed until a fabric is stable.
  test('shrinkAfter three washes has come to 97 % of its limit', () => {
    const course = courseThrough(5, 1, 2 / 7);
    expect(shrinkAfter(course, 3) / course.limit).toBeCloseTo(0.977, 3);
  });
});
