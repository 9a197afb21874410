import { describe, expect, test } from 'vitest';
import { fitCourses, groupSwatches } from '#core/wash/read-swatches.ts';
import { READING } from '#core/wash/shrink-quilt.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const swatch = (after: number, more: { fabric?: string; washes?: number } = {}) => ({
  fabric: 'flannel',
  direction: 'length' as const,
  before: 10,
  after,
  washes: 1,
  ...more,
});

describe('groupSwatches', () => {
  test('groupSwatches gathers by cloth, direction and wash count, fewer washes first', () => {
    const groups = groupSwatches(
      deepFreeze([
        swatch(9.4, { washes: 3 }),
        swatch(9.9, { fabric: 'denim' }),
        swatch(9.6),
        { ...swatch(9.8), direction: 'width' },
        swatch(9.5),
      ]),
      0.95,
    );
    const names = groups.map(({ fabric, direction, washes, n }) => [fabric, direction, washes, n]);
    expect(names).toEqual([
      ['denim', 'length', 1, 1],
      ['flannel', 'length', 1, 2],
      ['flannel', 'length', 3, 1],
      ['flannel', 'width', 1, 1],
    ]);
    expect(groups[1]?.mean).toBeCloseTo(-4.5, 12);
  });

  test('groupSwatches of nothing is nothing', () => {
    expect(groupSwatches([], 0.95)).toEqual([]);
  });
});

describe('fitCourses', () => {
  const courseOf = (...swatches: readonly ReturnType<typeof swatch>[]) =>
    fitCourses(groupSwatches(swatches, 0.95))[0];

  test('fitCourses takes the rate of the table for a known fabric, 2/7 for another', () => {
    expect(courseOf(swatch(9.6))?.course.rate).toBeCloseTo(2 / 7, 12);
    expect(courseOf(swatch(9.6, { fabric: 'gran’s curtain' }))?.course.rate).toBeCloseTo(2 / 7, 12);
  });

  test('fitCourses scales the whole course by the interval for one new piece', () => {
    const found = courseOf(swatch(9.6), swatch(9.65), swatch(9.7));
    // Mean 3.5 %, s 0.5, t 4.3027: 4.3027·0.5·√(4/3) = 2.4842 points at the first wash.
    const first = 1 - 2 / 7;
    const { low, usual, high } = found?.range ?? {};
    expect((usual?.limit ?? 0) * first).toBeCloseTo(0.035, 12);
    expect(((high?.limit ?? 0) - (usual?.limit ?? 0)) * first).toBeCloseTo(0.024842, 5);
    expect(((usual?.limit ?? 0) - (low?.limit ?? 0)) * first).toBeCloseTo(0.024842, 5);
  });

  test('fitCourses knows a single specimen no closer than its ruler', () => {
    const found = courseOf(swatch(9.6));
    const width = (found?.range.high.limit ?? 0) - (found?.range.usual.limit ?? 0);
    expect(width * (1 - 2 / 7)).toBeCloseTo(READING, 12);
  });

  test('fitCourses takes the error of a poor fit of single specimens for their doubt', () => {
    const found = courseOf(swatch(9.0), swatch(9.6, { washes: 2 }), swatch(9.1, { washes: 3 }));
    expect(found?.course.error).toBeGreaterThan(READING);
    const width = (found?.range.usual.limit ?? 0) - (found?.range.low.limit ?? 0);
    expect(width * (1 - (found?.course.rate ?? 0))).toBeCloseTo(found?.course.error ?? 0, 12);
  });

  test('fitCourses keeps the ends of a hopeless interval within what cloth can do', () => {
    const found = courseOf(swatch(5), swatch(10));
    expect(found?.range.high.limit).toBe(0.9);
    expect(found?.range.low.limit).toBe(-1);
  });
});
