import { describe, expect, test } from 'vitest';
import type { PurchasePlan } from '#core/cloth/offers/lay-out.ts';
import { listBought, writeArea } from '#core/yardage/list-bought.ts';
import { readFabric } from '#core/yardage/read-fabric.ts';

const OFFERS = [
  { kind: 'pieces', id: 'squares', width: 10, length: 10, count: 42, price: 4999 },
  { kind: 'roll', id: 'bolt', step: 4.5, least: 4.5, price: 1299 },
  { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1, price: 400 },
] as const;
const ORDER = readFabric(
  {
    id: 'cloth',
    width: 42,
    selvage: 0.5,
    prewash: { length: 0, width: 0 },
    squaring: 1,
    step: 4.5,
    offers: OFFERS,
    pieces: [],
  },
  'in',
);

function list(packs: readonly number[], steps: number) {
  const roll = steps > 0 ? { roll: { at: 0, steps, strips: [] } } : {};
  const plan: PurchasePlan = { ...roll, packs, sheets: [], placed: [] };
  return listBought(plan, ORDER, { offers: OFFERS, unit: 'in' });
}

describe('listBought', () => {
  test('listBought says what to ask for, in the order of the offers, prices rounded half up a line', () => {
    // 19 eighths of a yard at 12.99: 30.85125.
    expect(list([2, 3], 19)).toEqual({
      lines: [
        {
          offer: 'squares',
          count: 2,
          unit: 'pack',
          text: '2 packs of 42 pieces of 10 in by 10 in',
          price: 9998,
        },
        { offer: 'bolt', amount: 2.375, unit: 'yd', text: '2 3/8 yd', price: 3085 },
        {
          offer: 'quarter',
          count: 3,
          unit: 'pack',
          text: '3 pieces of 21 in by 18 in',
          price: 1200,
        },
      ],
      area: expect.closeTo((8400 + 85.5 * 42 + 3 * 378) * 25.4 ** 2, 3),
    });
  });

  test('listBought leaves out what is not bought', () => {
    expect(list([0, 1], 0).lines.map(({ text }) => text)).toEqual(['1 piece of 21 in by 18 in']);
    expect(list([1, 0], 0).lines.map(({ text }) => text)).toEqual([
      '1 pack of 42 pieces of 10 in by 10 in',
    ]);
    expect(list([0, 0], 0)).toEqual({ lines: [], area: 0 });
  });
});

describe('writeArea', () => {
  test('writeArea(a square yard, a square metre) is 1 in its own unit', () => {
    expect(writeArea(914.4 ** 2, 'in')).toBe(1);
    expect(writeArea(1e6, 'cm')).toBe(1);
  });
});
