import { describe, expect, test } from 'vitest';
import { writeCost } from '#core/yardage/write-cost.ts';

const line = (price?: number) => ({
  offer: 'q',
  count: 1,
  unit: 'pack' as const,
  text: '1 piece',
  ...(price !== undefined && { price }),
});

describe('writeCost', () => {
  test('writeCost adds the prices of the lines up, the total being its bound where that is proven', () => {
    const bought = { lines: [line(1050), line(299)], area: 1 };
    const write = (bound: number, optimal: boolean) =>
      writeCost({ bound, optimal }, { costs: 'price' }, { bought, unit: 'in' });
    expect(write(1348.6, true)).toEqual({ of: 'price', total: 1349, bound: 1349 });
    expect(write(1200.9, false)).toEqual({ of: 'price', total: 1349, bound: 1200 });
    expect(write(1350, false)).toEqual({ of: 'price', total: 1349, bound: 1349 });
  });

  test('writeCost of no prices is square yards or metres, the bound rounded down', () => {
    const bought = { lines: [line()], area: 1.5e6 };
    expect(
      writeCost({ bound: 9_999.99, optimal: false }, { costs: 'area' }, { bought, unit: 'cm' }),
    ).toEqual({ of: 'area', total: 1.5, bound: 0.9999 });
    const yard = { lines: [line()], area: 914.4 ** 2 };
    expect(
      writeCost({ bound: 0, optimal: true }, { costs: 'area' }, { bought: yard, unit: 'in' }),
    ).toEqual({ of: 'area', total: 1, bound: 1 });
  });
});
