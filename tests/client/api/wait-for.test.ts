import { expect, test } from 'vitest';
import { waitFor } from '../../../client/api/wait-for.ts';

test('waitFor waits as long as it is told', async () => {
  const start = performance.now();
  await waitFor(30, undefined);
  expect(performance.now() - start).toBeGreaterThan(25);
});

test('waitFor ends at once with the reason of whoever gives up, before or while it waits', async () => {
  const control = new AbortController();
  const waited = waitFor(60_000, control.signal);
  control.abort('enough');
  await expect(waited).rejects.toBe('enough');
  await expect(waitFor(60_000, control.signal)).rejects.toBe('enough');
});
