import { describe, expect, test } from 'vitest';
import type { KitBolt, KitsRequest } from '#core/contract.ts';
import { cutBolts } from '#core/kits/cut-bolts.ts';
import { specifyKits } from '#core/kits/kits-spec.ts';
import { writeCutting, writeLeft, writeMoney, writePurchases } from '#core/kits/write-kits.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';

const bolt: KitBolt = { id: 'a', role: 'top', width: 41, length: 101, cost: 900 };
const prepare = (own: Partial<KitsRequest> = {}) => {
  const read = resolveKits({
    plan: { target: { columns: 3, rows: 3 }, block: { cut: 10 } },
    bolts: [bolt],
    perKit: { distinctPrints: 1, mostOfOne: 4 },
    ...own,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { input } = read.value;
  const kits = specifyKits(input);
  const needs = [{ role: 'top' as const, print: 'a', squares: 18 }];
  return { input, kits, cuts: cutBolts(kits.bolts, kits.plan.block.cut, needs) };
};

describe('writeCutting and writeLeft', () => {
  test('writeCutting and writeLeft speak in the unit of the request', () => {
    const { cuts, input } = prepare();
    // 18 squares from strips of 4: 5 strips, 50 in and an inch of squaring-up.
    expect(writeCutting(cuts, input.unit)).toEqual([
      { id: 'a', role: 'top', print: 'a', perStrip: 4, strips: 10, cut: 5, used: 18, length: 51 },
    ]);
    expect(writeLeft(cuts, input.unit)).toEqual([{ id: 'a', length: 50, squares: 2 }]);
    expect(writeLeft(cuts, 'cm')).toEqual([{ id: 'a', length: 127, squares: 2 }]);
  });
});

describe('writePurchases', () => {
  test('writePurchases buys at the width of the bolts, and what no bolt shows at that of the plan', () => {
    const { kits, input } = prepare();
    // Nine a kit, four of one at most: 40 are enough of a for 10 kits, 50 of others are lacking.
    expect(writePurchases(kits, 10, input.unit)).toEqual([
      expect.objectContaining({ role: 'top', squares: 40, strips: 10, width: 41, length: 101 }),
      expect.objectContaining({ role: 'top', squares: 10, strips: 3, width: 41, length: 31 }),
      expect.objectContaining({ role: 'backing', squares: 90, strips: 23, width: 42, length: 231 }),
    ]);
    expect(writePurchases(kits, 20, input.unit)[0]).toMatchObject({
      print: 'a',
      squares: 40,
      width: 41,
    });
  });
});

describe('writeMoney', () => {
  test('writeMoney shares the cloth that is cut among the kits made', () => {
    const { input, cuts } = prepare();
    // 51 in at 900 a yard is 1275; two kits, 637.5 each, half up 638.
    expect(writeMoney(input, cuts, 2)).toMatchObject({ materials: 638, cost: 638 });
    expect(writeMoney(input, cuts, 2)).not.toHaveProperty('price');
    expect(writeMoney(input, cuts, 0)).toBeUndefined();
  });

  test('writeMoney reckons by the metre in centimetres, and in the decimals of the currency', () => {
    const metric = {
      ...bolt,
      width: '41 in',
      length: '101 in',
      selvage: '0.5 in',
      squaring: '1 in',
    };
    const { input, cuts } = prepare({
      unit: 'cm',
      plan: { unit: 'in', target: { columns: 3, rows: 3 }, block: { cut: 10 } },
      bolts: [metric],
      currency: 'JPY',
      costs: { markup: 50 },
    });
    // 51 in are 1.2954 m; at 900 yen a metre 1165.86; a half more 1748.79.
    expect(writeMoney(input, cuts, 1)).toMatchObject({
      currency: 'JPY',
      decimals: 0,
      materials: 1166,
      price: 1749,
    });
  });

  test('writeMoney says nothing where no bolt has a cost', () => {
    const { cost: _, ...free } = bolt;
    const { input, cuts } = prepare({ bolts: [free] });
    expect(writeMoney(input, cuts, 1)).toBeUndefined();
  });
});
