import { describe, expect, test } from 'vitest';
import { shrinkLeft } from '#core/wash/follow-course.ts';
import { prewashRates } from '#core/wash/prewash-rates.ts';

const flannel = { fabric: 'flannel', shrink: { length: 6, width: 3 }, shrinkWashes: 1 } as const;

describe('prewashRates', () => {
  test('prewashRates of cloth that goes unwashed are nothing', () => {
    expect(prewashRates({ ...flannel, prewashed: false })).toEqual({ length: 0, width: 0 });
  });

  test('prewashRates of rates measured at the first wash are those rates', () => {
    const { length, width } = prewashRates({ ...flannel, prewashed: true });
    expect(length).toBeCloseTo(0.06, 12);
    expect(width).toBeCloseTo(0.03, 12);
  });

  test('prewashRates of rates measured at a later wash are less', () => {
    const { length } = prewashRates({ ...flannel, shrinkWashes: 3, prewashed: true });
    // 6 = k·(1 − (2/7)³), so one wash takes k·5/7.
    expect(length).toBeCloseTo((0.06 * (5 / 7)) / (1 - (2 / 7) ** 3), 12);
    expect(length).toBeLessThan(0.06);
  });

  test('prewashRates and what is left make up two washes', () => {
    const { length } = prewashRates({ ...flannel, prewashed: true });
    const left = shrinkLeft({ limit: 0.06 / (5 / 7), rate: 2 / 7 }, 1, 1);
    expect((1 - length) * (1 - left)).toBeCloseTo(1 - (0.06 / (5 / 7)) * (1 - 4 / 49), 12);
  });
});
