import { describe, expect, test } from 'vitest';
import type { ClothNeed } from '#core/cloth/buy-cloth.ts';
import { writeNeed } from '#core/plan/write-need.ts';

const NEED: ClothNeed = {
  role: 'top',
  fabric: 'denim',
  print: 'A',
  pieces: 4,
  spare: 1,
  usableWidth: 254,
  perStrip: 5,
  strips: 1,
  length: 127,
  buy: { amount: 0.25, unit: 'yd', text: '1/4 yd' },
  waste: 0.25,
  spareFree: 3,
  left: [{ width: 254, length: 63.5 }],
};

describe('writeNeed', () => {
  test('writeNeed turns millimetres into the unit and fractions into percent', () => {
    expect(writeNeed(NEED, undefined, 'in')).toEqual({
      role: 'top',
      fabric: 'denim',
      print: 'A',
      pieces: 4,
      spare: 1,
      usableWidth: 10,
      perStrip: 5,
      strips: 1,
      length: 5,
      buy: NEED.buy,
      bound: 5,
      waste: 25,
      spareFree: 3,
      left: [{ width: 10, length: 2.5, count: 1 }],
    });
    expect(writeNeed(NEED, undefined, 'cm').left).toEqual([
      { width: 25.4, length: 6.35, count: 1 },
    ]);
  });

  test('writeNeed tells waste and rests of the purchase where there is one, and what is lacking', () => {
    const purchase = {
      lines: [{ offer: 'q', count: 2, unit: 'pack', text: '2 pieces' }],
      cost: { of: 'area', total: 0.5, bound: 0.4 },
      waste: 0.5,
      spareFree: 0,
      left: [{ width: 25.4, length: 254, count: 2 }],
      lacking: 0,
    } as const;
    const row = writeNeed(NEED, purchase, 'in');
    expect(row).toMatchObject({
      buy: NEED.buy,
      waste: 50,
      spareFree: 0,
      left: [{ width: 1, length: 10, count: 2 }],
      purchase: purchase.lines,
      cost: purchase.cost,
    });
    expect(row).not.toHaveProperty('lacking');
    expect(writeNeed(NEED, { ...purchase, lacking: 2 }, 'in').lacking).toBe(2);
  });
});
