import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundPurchase } from '#core/cloth/round-purchase.ts';
import { MILLIMETRES } from '#core/length.ts';
import { readLength } from '#core/read-length.ts';

const EIGHTH = 114.3;

describe('roundPurchase', () => {
  test.each([
    [0, EIGHTH, 'in', 0, '0 yd'],
    [1, EIGHTH, 'in', 0.125, '1/8 yd'],
    [114.3, EIGHTH, 'in', 0.125, '1/8 yd'],
    [114.4, EIGHTH, 'in', 0.25, '1/4 yd'],
    [2616.2, EIGHTH, 'in', 2.875, '2 7/8 yd'],
    [914.4, 304.8, 'in', 1, '1 yd'],
    [900, 57.15, 'in', 1, '1 yd'],
    [850, 57.15, 'in', 0.9375, '0.9375 yd'],
    [2100, 100, 'cm', 2.1, '2.1 m'],
    [2101, 100, 'cm', 2.2, '2.2 m'],
    [2101, 250, 'cm', 2.25, '2.25 m'],
    [2000, 500, 'cm', 2, '2 m'],
  ] as const)('roundPurchase(%d by %d, %s) is %d: %s', (length, step, unit, amount, text) => {
    const yd = unit === 'in' ? 'yd' : 'm';
    expect(roundPurchase(length, step, unit)).toEqual({ amount, unit: yd, text });
  });

  test('roundPurchase buys what is needed and less than a step more', () => {
    const need = fc.double({ min: 0, max: 50_000, noNaN: true });
    const shop = fc.constantFrom(
      [EIGHTH, 'in'] as const,
      [228.6, 'in'] as const,
      [100, 'cm'] as const,
      [250, 'cm'] as const,
    );
    fc.assert(
      fc.property(need, shop, (length, [step, unit]) => {
        const { amount, unit: bulk } = roundPurchase(length, step, unit);
        const bought = amount * MILLIMETRES[bulk];
        expect(bought).toBeGreaterThanOrEqual(length - 1e-4);
        expect(bought).toBeLessThan(length + step);
      }),
    );
  });

  test('roundPurchase says in words what it says in figures', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50_000 }), (length) => {
        const { amount, text } = roundPurchase(length, EIGHTH, 'in');
        const read = readLength(text, 'in');
        expect(read).toEqual({ ok: true, value: expect.closeTo(amount * 914.4, 6) });
      }),
    );
  });
});
