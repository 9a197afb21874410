import { describe, expect, test } from 'vitest';
import { EXAMPLE_STASH, holdsExample } from '../../../../client/elements/stash/example-stash.ts';
import bolts from '../../../../demo-data/bolts.json' with { type: 'json' };

describe('EXAMPLE_STASH', () => {
  test('is cut from the bolts of the invented shop, none wider than its bolt', () => {
    for (const { id, width = '' } of EXAMPLE_STASH) {
      const bolt = bolts.bolts.find((one) => one.id === id);
      expect(Number(width.replace('½', '.5'))).toBeLessThanOrEqual(bolt?.width.in ?? 0);
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
