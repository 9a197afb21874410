import { Hono } from 'hono';
import { expect, test } from 'vitest';
import { allowMethods } from '../../../api/http/allow-methods.ts';

const app = new Hono();
app.all('/all', allowMethods(['GET', 'HEAD', 'POST', 'QUERY']));
app.all('/few', allowMethods(['GET', 'HEAD']));

test('allowMethods answers OPTIONS with what is possible, for a day', async () => {
  const answer = await app.request('/all', { method: 'OPTIONS' });
  expect(answer.status).toBe(204);
  expect(answer.headers.get('allow')).toBe('GET, HEAD, POST, QUERY, OPTIONS');
  expect(answer.headers.get('access-control-allow-methods')).toBe(
    'GET, HEAD, POST, QUERY, OPTIONS',
  );
  expect(answer.headers.get('access-control-allow-headers')).toContain('Content-Type');
  expect(answer.headers.get('access-control-allow-origin')).toBe('*');
  expect(answer.headers.get('access-control-max-age')).toBe('86400');
});

test('allowMethods tells what QUERY may carry where QUERY is taken', async () => {
  const [all, few] = await Promise.all(
    ['/all', '/few'].map((path) => app.request(path, { method: 'OPTIONS' })),
  );
  expect(all?.headers.get('accept-query')).toBe('application/json');
  expect(few?.headers.has('accept-query')).toBe(false);
});

test.each(['PUT', 'DELETE', 'PATCH', 'POST'])(
  'allowMethods answers %s with 405',
  async (method) => {
    const answer = await app.request('/few', { method });
    expect(answer.status).toBe(405);
    expect(answer.headers.get('allow')).toBe('GET, HEAD, OPTIONS');
    expect(await answer.json()).toMatchObject({
      type: '/problems/wrong-method',
      detail: `The method ${method} is not possible at this address: use GET, HEAD, OPTIONS.`,
    });
  },
);
