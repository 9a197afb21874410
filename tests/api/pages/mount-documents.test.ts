import { Hono } from 'hono';
import { describe, expect, test } from 'vitest';
import type { Surroundings } from '../../../api/http/limit-rate.ts';
import { answerProblem } from '../../../api/http/problem.ts';
import { mountDocuments } from '../../../api/pages/mount-documents.ts';
import { useWorker } from '../../support/worker.ts';

function makeApp() {
  const app = new Hono<Surroundings>();
  mountDocuments(app);
  app.notFound(() => answerProblem([{ code: 'not-found', path: [] }]));
  return app;
}

const worker = useWorker();

describe('GET /openapi.json', () => {
  test('serves the file to any page, for a day', async () => {
    const answer = await worker.fetch('/openapi.json');
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toMatch(/^application\/json/);
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(answer.headers.get('cache-control')).toContain('max-age=86400');
    expect(await answer.json()).toMatchObject({ openapi: '3.1.1' });
  });
  test('is answered 304 to whoever holds it', async () => {
    const { headers } = await worker.fetch('/openapi.json');
    const tag = headers.get('etag') ?? '';
    const answer = await worker.fetch('/openapi.json', { headers: { 'If-None-Match': tag } });
    expect([answer.status, answer.headers.get('etag')]).toEqual([304, tag]);
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
  });
  test('says what other methods may do, as every address does', async () => {
    const refused = await worker.fetch('/openapi.json', { method: 'POST', body: '{}' });
    expect([refused.status, refused.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS']);
    expect(refused.headers.get('content-type')).toBe('application/problem+json');
    const options = await worker.fetch('/openapi.json', { method: 'OPTIONS' });
    expect([options.status, options.headers.get('allow')]).toEqual([204, 'GET, HEAD, OPTIONS']);
  });
  test('is not found where no files are served', async () => {
    expect((await makeApp().request('/openapi.json')).status).toBe(404);
    const ASSETS = { fetch: async () => new Response(null, { status: 404 }) };
    expect((await makeApp().request('/openapi.json', {}, { ASSETS })).status).toBe(404);
  });
});
