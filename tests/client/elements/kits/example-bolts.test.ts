import { describe, expect, test } from 'vitest';
import { EXAMPLE_BOLTS, holdsExample } from '../../../../client/elements/kits/example-bolts.ts';
import bolts from '../../../../demo-data/bolts.json' with { type: 'json' };

describe('EXAMPLE_BOLTS', () => {
  test('are bolts of the invented shop, in their widths and at their prices', () => {
    for (const { id, width, cost } of EXAMPLE_BOLTS) {
      const bolt = bolts.bolts.find((one) => one.id === id);
      expect([Number(width), Number(cost)]).toEqual([bolt?.width.in, bolt?.price.yd]);
    }
  });
});

describe('holdsExample', () => {
  test('knows one invented row among others', () => {
    expect(holdsExample([{ id: 'Mine' }, { id: 'Heron dot' }])).toBe(true);
    expect(holdsExample([{ id: 'Mine' }])).toBe(false);
    expect(holdsExample([])).toBe(false);
  });
});
