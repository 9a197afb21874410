import { describe, expect, test } from 'vitest';
import { fitCourses, groupSwatches } from '#core/wash/read-swatches.ts';
import { writeCourse, writeGroup, writeSandwich } from '#core/wash/write-wash.ts';

const swatch = (after: number, washes = 1) => ({
  fabric: 'flannel',
  direction: 'length' as const,
  before: 10,
  after,
  washes,
});
const groups = (...swatches: readonly ReturnType<typeof swatch>[]) => groupSwatches(swatches, 0.95);

const inches = { unit: 'in', side: 8.5, groups: [] } as const;

describe('writeGroup', () => {
  test('writeGroup of one specimen says nothing of spread by leaving it out', () => {
    const [group] = groups(swatch(9.6));
    expect(group && writeGroup(group, inches)).toEqual({
      fabric: 'flannel',
      direction: 'length',
      washes: 1,
      change: -4,
      n: 1,
      reading: 0.5002,
      notes: ['one-specimen'],
    });
  });

  test('writeGroup of three specimens has spread, interval and that for one more piece', () => {
    const [group] = groups(swatch(9.6), swatch(9.65), swatch(9.7));
    expect(group && writeGroup(group, inches)).toMatchObject({
      change: -3.5,
      sd: 0.5,
      low: -4.7421,
      high: -2.2579,
      nextLow: -5.9841,
      nextHigh: -1.0159,
    });
  });

  test('writeGroup reads centimetres to the millimetre', () => {
    const [group] = groups({ ...swatch(24), before: 25 });
    // 100·(0.1/√12)/25·√(1 + 0.96²).
    expect(group && writeGroup(group, { ...inches, unit: 'cm' }).reading).toBe(0.1601);
  });
});

describe('writeGroup of skewed swatches', () => {
  test('writeGroup has the mean skew of those whose diagonals were given, and the lean of a block', () => {
    const square = (ac: number, bd: number) => ({ ...swatch(9.6), diagonals: { ac, bd } });
    const [group] = groups(square(26, 25.5), square(365, 350), swatch(9.6));
    const mean = (100 * (1 / 51.5) + 100 * (30 / 715)) / 2;
    const { skew } = group ? writeGroup(group, { ...inches, side: 10 }) : {};
    expect(skew?.mean).toBeCloseTo(mean, 4);
    expect(skew?.lean).toBeCloseTo(mean / 10, 4);
    expect(skew).toMatchObject({ n: 2, side: 10 });
  });

  test('writeGroup warns of a change that the ruler can hardly see', () => {
    const [group] = groups(swatch(9.95), swatch(9.95));
    expect(group && writeGroup(group, inches).notes).toEqual(['coarse-reading']);
  });
});

describe('writeGroup of a cloth that grew back', () => {
  test('writeGroup says so where more washes shrank it less, beyond what the ruler blurs', () => {
    const all = groups(swatch(9.4), swatch(9.6, 3));
    const [once, thrice] = all;
    const frame = { ...inches, groups: all };
    expect(once && writeGroup(once, frame).notes).toEqual(['one-specimen']);
    expect(thrice && writeGroup(thrice, frame).notes).toEqual(['one-specimen', 'grew-back']);
  });
});

describe('writeCourse', () => {
  test('writeCourse has the sign of the standards: shrinkage is negative', () => {
    const [course] = fitCourses(groups(swatch(9.5)));
    expect(course && writeCourse(course, [1, 3])).toEqual({
      fabric: 'flannel',
      direction: 'length',
      limit: -7,
      rate: 0.2857,
      points: [
        { washes: 1, change: -5 },
        { washes: 3, change: -6.8367 },
      ],
    });
  });

  test('writeCourse of two wash counts tells the error of its fit', () => {
    const [course] = fitCourses(groups(swatch(9.5, 1), swatch(9.4, 3)));
    expect(course && writeCourse(course, [1]).error).toBe(0);
  });
});

describe('writeSandwich', () => {
  test('writeSandwich has the smaller quilt low', () => {
    const shrink = (rate: number) => ({ width: rate, height: rate });
    const written = writeSandwich({
      washes: 2,
      usual: shrink(0.05),
      least: shrink(0.03),
      most: shrink(0.1),
      isMeasured: false,
    });
    expect(written).toEqual({
      washes: 2,
      change: { width: -5, height: -5 },
      low: { width: -10, height: -10 },
      high: { width: -3, height: -3 },
    });
  });
});
