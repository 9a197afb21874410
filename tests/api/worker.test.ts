import { expect, test } from 'vitest';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();

test('GET /health answers on the worker runtime', async () => {
  const answer = await worker.fetch('/health');
  expect(await answer.json()).toMatchObject({ ok: true });
});

test('GET of a path that is neither file nor endpoint answers 404', async () => {
  const answer = await worker.fetch('/no-such-path');
  expect(answer.status).toBe(404);
});
