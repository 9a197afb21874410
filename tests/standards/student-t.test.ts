import { tTest } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { measureChange } from '#core/wash/measure-change.ts';
import { studentQuantile } from '#core/wash/student-quantile.ts';

// Two-sided 95 % points of Student's t, as in any table of statistics. Those for n = 2 to 6 were read
// in the table of a textbook; the others are from memory.
const TABLE: readonly (readonly [freedom: number, t: number])[] = [
  [1, 12.7062],
  [2, 4.3027],
  [3, 3.1824],
  [4, 2.7764],
  [5, 2.5706],
  [6, 2.4469],
  [7, 2.3646],
  [8, 2.306],
  [9, 2.2622],
  [30, 2.0423],
  [194, 1.9723],
];

describe('studentQuantile', () => {
  test.each(TABLE)('studentQuantile(%i, 0.95) is %d, as printed in tables', (freedom, t) => {
    expect(studentQuantile(freedom, 0.95)).toBeCloseTo(t, 4);
  });

  // From memory: 90 % and 99 % columns of the same tables.
  test('studentQuantile has the 90 % and 99 % columns too', () => {
    expect(studentQuantile(4, 0.9)).toBeCloseTo(2.132, 3);
    expect(studentQuantile(4, 0.99)).toBeCloseTo(4.604, 3);
    expect(studentQuantile(9, 0.99)).toBeCloseTo(3.25, 3);
  });
});

describe('measureChange', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, wafer particle counts: figures from memory,
  // recomputed. Against 50 the handbook prints t = 1.782.
  test('measureChange of the ten wafer counts has the mean, spread and t of the NIST handbook', () => {
    const counts = [50, 48, 44, 56, 61, 52, 53, 55, 67, 51];
    const { mean, sd = 0, interval } = measureChange(counts, 0.95);
    expect(mean).toBeCloseTo(53.7, 10);
    expect(sd).toBeCloseTo(6.567, 3);
    expect((mean - 50) / (sd / Math.sqrt(10))).toBeCloseTo(1.782, 3);
    // simple-statistics divides by n, not n − 1, in its spread.
    expect(tTest(counts, 50) * Math.sqrt(9 / 10)).toBeCloseTo(1.782, 3);
    expect(interval?.low).toBeCloseTo(49.0024, 4);
    expect(interval?.high).toBeCloseTo(58.3976, 4);
  });

  // NIST/SEMATECH e-Handbook 1.3.5.2, ZARR13.DAT: N, mean, sd and limits from memory.
  test('measureChange of 195 values with the summary of ZARR13 has the limits of the NIST handbook', () => {
    const [n, mean, sd] = [195, 9.26146, 0.022789];
    const values = makeValues(n, mean, sd);
    const found = measureChange(values, 0.95);
    expect(found.sd).toBeCloseTo(sd, 9);
    expect(found.interval?.low).toBeCloseTo(9.258242, 5);
    expect(found.interval?.high).toBeCloseTo(9.264679, 5);
  });

  // Worked by hand from the t table: 4.3027 · 0.5 / √3 and 2.7764 · s / √5.
  test('measureChange of three and of five swatches has the half-widths worked by hand', () => {
    const three = measureChange([-4, -3.5, -3], 0.95);
    expect(three.sd).toBeCloseTo(0.5, 12);
    expect(three.interval?.low).toBeCloseTo(-4.7421, 4);
    expect(three.interval?.high).toBeCloseTo(-2.2579, 4);
    const five = measureChange([-5, -4.5, -5.5, -5, -5], 0.95);
    expect((five.interval?.high ?? 0) - five.mean).toBeCloseTo(0.439, 4);
  });

  // For one new piece: 4.3027 · 0.5 · √(1 + 1/3).
  test('measureChange gives one new piece t·s·√(1 + 1/n)', () => {
    const { next } = measureChange([-4, -3.5, -3], 0.95);
    expect((next?.high ?? 0) + 3.5).toBeCloseTo(4.3027 * 0.5 * Math.sqrt(4 / 3), 4);
  });
});

/** Values with just this mean and sample standard deviation. */
function makeValues(n: number, mean: number, sd: number): readonly number[] {
  const steps = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const spread = Math.sqrt(steps.reduce((sum, step) => sum + step ** 2, 0) / (n - 1));
  return steps.map((step) => mean + (step * sd) / spread);
}
