import { Hono } from 'hono';
import { expect, test } from 'vitest';
import type { Surroundings } from '../../../api/http/limit-rate.ts';
import { mountProblemPages } from '../../../api/pages/mount-problem-pages.ts';

const app = new Hono<Surroundings>();
mountProblemPages(app);

test.each(['/problems', '/problems/too-deep'])(
  'mountProblemPages serves %s as a page without script',
  async (path) => {
    const answer = await app.request(path);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('content-security-policy')).toMatch(
      /^default-src 'none'; style-src 'sha256-/,
    );
  },
);

test('mountProblemPages has nothing at another name', async () => {
  expect((await app.request('/problems/none')).status).toBe(404);
});

test('mountProblemPages takes no POST', async () => {
  expect((await app.request('/problems/too-deep', { method: 'POST' })).status).toBe(405);
});
