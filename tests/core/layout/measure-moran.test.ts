import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listJoins } from '#core/layout/list-joins.ts';
import { measureMoran } from '#core/layout/measure-moran.ts';

function permute(values: readonly number[]): readonly (readonly number[])[] {
  if (values.length < 2) return [values];
  return values.flatMap((value, at) =>
    permute(values.toSpliced(at, 1)).map((rest) => [value, ...rest]),
  );
}

describe('measureMoran', () => {
  test('measureMoran gives mean and variance of all orders of the same values', () => {
    fc.assert(
      fc.property(
        fc.constantFrom([2, 3], [3, 2], [6, 1], [2, 2]),
        fc.constantFrom('corners' as const, 'sides' as const),
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 6, maxLength: 6 }),
        ([columns = 1, rows = 1], touch, values) => {
          const own = values.slice(0, columns * rows);
          fc.pre(new Set(own).size > 1);
          const joins = listJoins({ columns, rows }, touch);
          const all = permute(own).map((order) => measureMoran(joins, order)?.moran ?? 0);
          const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
          const variance = all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / all.length;
          const found = measureMoran(joins, own);
          expect(found?.expected).toBeCloseTo(mean, 9);
          expect(found?.variance).toBeCloseTo(variance, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('measureMoran does not care for the scale of the values', () => {
    const joins = listJoins({ columns: 3, rows: 3 }, 'sides');
    const values = [1, 5, 2, 8, 3, 9, 4, 7, 6];
    const scaled = measureMoran(
      joins,
      values.map((value) => 100 - 3 * value),
    );
    expect(scaled?.moran).toBeCloseTo(measureMoran(joins, values)?.moran ?? Number.NaN, 12);
  });

  test('measureMoran of values all the same, or of one cell, is nothing', () => {
    expect(
      measureMoran(listJoins({ columns: 3, rows: 3 }, 'sides'), Array(9).fill(4)),
    ).toBeUndefined();
    expect(measureMoran(listJoins({ columns: 1, rows: 1 }, 'sides'), [4])).toBeUndefined();
  });
});
