import { expect, test } from 'vitest';
import { app, version } from '../../api/app.ts';
import manifest from '../../package.json' with { type: 'json' };

test('GET /health says that all is well and which version it is', async () => {
  const answer = await app.request('/health');
  expect(answer.status).toBe(200);
  expect(await answer.json()).toEqual({ ok: true, version });
});

test('version is that of package.json', () => {
  expect(version).toBe(manifest.version);
});
