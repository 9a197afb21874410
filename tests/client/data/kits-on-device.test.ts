import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { computeKits } from '../../../client/data/kits-on-device.ts';
import { FIRST_DRAFT, writeAsked } from '../../../client/elements/kits/kits-state.ts';

const { query } = writeAsked(FIRST_DRAFT);

describe('computeKits', () => {
  test('computeKits gives the bytes that the service gives', async () => {
    const outcome = computeKits(query);
    const service = await app.request(`/v1/kits?${query}`);
    expect(outcome.ok && JSON.stringify(outcome.value)).toBe(await service.text());
  });

  test.each(['', 'moon=full', `${query}&unit=ell`])(
    'computeKits(%j) tells what is wrong',
    (asked) => {
      const outcome = computeKits(asked);
      expect(outcome.ok).toBe(false);
      expect(!outcome.ok && outcome.faults.length).toBeGreaterThan(0);
    },
  );
});
