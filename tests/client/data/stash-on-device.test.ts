import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { computeStash } from '../../../client/data/stash-on-device.ts';
import { FIRST_DRAFT, writeAsked } from '../../../client/elements/stash/stash-state.ts';

const { query } = writeAsked(FIRST_DRAFT);

describe('computeStash', () => {
  test('computeStash gives the bytes that the service gives', async () => {
    const outcome = computeStash(query);
    const service = await app.request(`/v1/stash?${query}`);
    expect(outcome.ok && JSON.stringify(outcome.value)).toBe(await service.text());
  });

  test.each(['', 'moon=full', `${query}&unit=ell`])(
    'computeStash(%j) tells what is wrong',
    (asked) => {
      const outcome = computeStash(asked);
      expect(outcome.ok).toBe(false);
      expect(!outcome.ok && outcome.faults.length).toBeGreaterThan(0);
    },
  );
});
