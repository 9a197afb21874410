import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priceKit, roundHalfUp } from '#core/kits/price-kit.ts';

const sums = { labour: 0, packaging: 0, overhead: 0 };
const money = fc.integer({ min: 0, max: 1_000_000 });

describe('priceKit', () => {
  test('priceKit from a margin is cost / (1 − margin): 60 at 40 % sells for 100', () => {
    expect(priceKit({ ...sums, materials: 6000, margin: 0.4 })).toEqual({
      materials: 6000,
      cost: 6000,
      price: 10_000,
      margin: 0.4,
    });
  });

  test('priceKit from a markup is cost·(1 + markup): 60 at 66 2/3 % sells for 100, a margin of 40 %', () => {
    const { price, margin } = priceKit({ ...sums, materials: 6000, markup: 2 / 3 });
    expect(price).toBe(10_000);
    expect(margin).toBeCloseTo(0.4, 12);
  });

  test('priceKit: a markup of m is a margin of m / (1 + m)', () => {
    fc.assert(
      fc.property(money, fc.integer({ min: 0, max: 900 }), (cost, percent) => {
        const markup = percent / 100;
        const one = priceKit({ ...sums, materials: cost, markup });
        const other = priceKit({ ...sums, materials: cost, margin: markup / (1 + markup) });
        expect(one.price).toBe(other.price);
      }),
    );
  });

  test('priceKit: a price given stays, below cost too', () => {
    expect(priceKit({ ...sums, materials: 150, price: 100 })).toEqual({
      materials: 150,
      cost: 150,
      price: 100,
      margin: -0.5,
    });
    expect(priceKit({ ...sums, materials: 150 })).toEqual({ materials: 150, cost: 150 });
  });

  test('priceKit of nothing has no margin', () => {
    expect(priceKit({ ...sums, materials: 0, margin: 0.4 })).toEqual({
      materials: 0,
      cost: 0,
      price: 0,
    });
  });

  test('priceKit: rounded materials and whole sums add up to the rounded cost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        money,
        money,
        money,
        (own, a, b, c) => {
          const { materials, cost } = priceKit({
            materials: own,
            labour: a,
            packaging: b,
            overhead: c,
          });
          expect(materials + a + b + c).toBe(cost);
        },
      ),
    );
  });

  test('priceKit: the margin of the price is the margin asked for, to what a minor unit is worth', () => {
    fc.assert(
      fc.property(money, fc.integer({ min: 0, max: 999 }), (cost, permille) => {
        const { price = 0, margin } = priceKit({
          ...sums,
          materials: cost,
          margin: permille / 1000,
        });
        if (margin === undefined) return;
        expect(Math.abs(margin - permille / 1000)).toBeLessThanOrEqual(0.6 / price + 1e-9);
      }),
    );
  });
});

describe('roundHalfUp', () => {
  test.each([
    [0.5, 1],
    [1.5, 2],
    [2.5, 3],
    [2.4999, 2],
    [1.005 * 100, 101],
    [0, 0],
  ])('roundHalfUp(%d) is %i', (amount, whole) => {
    expect(roundHalfUp(amount)).toBe(whole);
  });
});
