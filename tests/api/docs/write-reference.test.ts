import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { batch, ENDPOINTS } from '../../../api/app.ts';
import { REFERENCE_FILE, writeReference } from '../../../api/docs/write-reference.ts';
import { useWorker } from '../../support/worker.ts';

const worker = useWorker();
const page = writeReference();

test('writeReference gives the page that is served, byte for byte; `npm run openapi` writes it', async () => {
  const served = await readFile(REFERENCE_FILE, 'utf8');
  expect(served === page, 'Run npm run openapi.').toBe(true);
  const answer = await worker.fetch('/api');
  expect([answer.status, (await answer.text()) === page]).toEqual([200, true]);
});

test('writeReference has a section for every address, and no script', () => {
  for (const { path } of [...ENDPOINTS, batch]) expect(page).toContain(`<code>${path}</code></h2>`);
  expect(page).not.toMatch(/<script|\son\w+=|https?:\/\/(?!localhost)/);
});

test('every form of the page asks what is answered with 200', async () => {
  const forms = [...page.matchAll(/<form action="([^"]+)" method="get">(.*?)<\/form>/gs)];
  expect(forms).toHaveLength(ENDPOINTS.length);
  for (const [, path, fields] of forms) {
    const named = [...String(fields).matchAll(/name="([^"]+)" value="([^"]*)"/g)];
    const query = new URLSearchParams(
      named.map(([, name, value]) => [String(name), String(value).replaceAll('&quot;', '"')]),
    );
    const answer = await worker.fetch(`${path}?${query}`);
    expect([path, answer.status]).toEqual([path, 200]);
  }
});
