import { describe, expect, test } from 'vitest';
import type { KitBolt, KitsRequest } from '#core/contract.ts';
import { startReading } from '#core/wish/reading.ts';
import { resolveCosts, resolveCurrency } from '#core/wish/resolve-costs.ts';

const bolt = (own: Partial<KitBolt> = {}): KitBolt => ({
  id: 'a',
  role: 'top',
  width: 44,
  length: 360,
  ...own,
});
const plan = { target: { width: 40, height: 50 } };
const read = (request: Omit<KitsRequest, 'plan'>, unit: 'in' | 'cm' = 'in') => {
  const reading = startReading(unit);
  const costs = resolveCosts(reading, { plan, ...request });
  const currency = resolveCurrency(reading, { plan, ...request });
  return { reading, costs, currency };
};

describe('resolveCosts', () => {
  test('resolveCosts counts what is not told as nothing, and tells it where there is money', () => {
    const { costs, reading } = read({ bolts: [bolt({ cost: 900 })], costs: { labour: 500 } });
    expect(costs).toEqual({ packaging: 0, labour: 500, overhead: 0 });
    const paths = reading.assumptions.map(({ path }) => path);
    expect(paths).toEqual(['unit', 'costs.packaging', 'costs.overhead', 'currency']);
    expect(read({ bolts: [bolt()] }).reading.assumptions.map(({ path }) => path)).toEqual(['unit']);
  });

  test('resolveCosts takes one of margin, markup and price', () => {
    const { reading } = read({ bolts: [bolt({ cost: 9 })], costs: { margin: 40, price: 900 } });
    expect(reading.faults).toEqual([
      {
        code: 'price-unclear',
        path: ['costs'],
        expected: ['margin', 'markup', 'price'],
        received: 'margin and price',
      },
    ]);
    expect(read({ bolts: [bolt({ cost: 9 })], costs: { markup: 50 } }).costs).toMatchObject({
      markup: 50,
    });
  });

  test('resolveCosts wants a cost of every bolt where there is any money', () => {
    const { reading } = read({ bolts: [bolt({ cost: 900 }), bolt({ id: 'b' })] });
    expect(reading.faults).toMatchObject([{ code: 'missing', path: ['bolts', 1, 'cost'] }]);
    const labour = read({ bolts: [bolt()], costs: { labour: 500 } });
    expect(labour.reading.faults).toMatchObject([{ code: 'missing', path: ['bolts', 0, 'cost'] }]);
  });
});

describe('resolveCurrency', () => {
  test('resolveCurrency is that of the request, else of the bolts, else the usual one', () => {
    expect(read({ bolts: [bolt()] }).currency).toBe('USD');
    expect(read({ bolts: [bolt()] }, 'cm').currency).toBe('EUR');
    expect(read({ bolts: [bolt(), bolt({ currency: 'GBP' })] }).currency).toBe('GBP');
    expect(read({ bolts: [bolt()], currency: 'JPY' }).currency).toBe('JPY');
  });

  test('resolveCurrency refuses every bolt in another', () => {
    const bolts = ['GBP', 'EUR', 'GBP'].map((currency, at) => bolt({ id: `${at}`, currency }));
    expect(read({ bolts }).reading.faults).toEqual([
      {
        code: 'mixed-currencies',
        path: ['bolts', 1, 'currency'],
        expected: 'GBP',
        received: 'EUR',
      },
    ]);
  });
});
