import { describe, expect, test } from 'vitest';
import { priceLength } from '#core/counter/price-length.ts';

describe('priceLength', () => {
  // By hand: 12.99 · 2.375 = 30.85125; 8.90 · 2.625 = 23.3625; 0.99 · 0.125 = 0.12375.
  test.each([
    [1299, 2.375, 3085],
    [890, 2.625, 2336],
    [99, 0.125, 12],
    [1000, 0.125, 125],
    [100, 0.125, 13],
    [0, 4, 0],
  ])('priceLength(%d, %d) is %d', (price, amount, cost) => {
    expect(priceLength(price, amount)).toBe(cost);
  });

  test('priceLength takes a half lost in the last bits for a half', () => {
    expect(priceLength(1005, 0.7)).toBe(704);
  });
});
