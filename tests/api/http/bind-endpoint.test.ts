import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { makeToyApp, type ToyRequest } from '../../support/toy-endpoint.ts';

const reckoned = vi.fn();
const app = makeToyApp(reckoned);
const headers = { 'Content-Type': 'application/json' };
const send = (method: string, input: unknown) =>
  app.request('/toy', { method, headers, body: JSON.stringify(input) });

describe('bindEndpoint answers', () => {
  test('GET, HEAD, POST and QUERY of one input alike', async () => {
    const input = { id: 'a', count: 3, list: [4, 5.5] };
    const address = '/toy?list.1=5.5&count=3&id=a&list.0=4';
    const [get, head, post, query] = await Promise.all([
      app.request(address),
      app.request(address, { method: 'HEAD' }),
      send('POST', input),
      send('QUERY', input),
    ]);
    const text = await get.text();
    expect(JSON.parse(text)).toEqual({ input: { ...input, crash: false } });
    expect([await post.text(), await query.text()]).toEqual([text, text]);
    expect(await head.text()).toBe('');
    for (const answer of [get, head, post, query]) {
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-location')).toBe('/toy?id=a&count=3&list.0=4&list.1=5.5');
      expect(answer.headers.get('etag')).toBe(get.headers.get('etag'));
    }
  });
  test('304 without reckoning', async () => {
    const etag = (await app.request('/toy?id=a')).headers.get('etag') ?? '';
    reckoned.mockClear();
    const answer = await app.request('/toy?id=a&count=1', { headers: { 'If-None-Match': etag } });
    expect(answer.status).toBe(304);
    expect(reckoned).not.toHaveBeenCalled();
  });
  test('the core’s faults as a problem', async () => {
    const answer = await app.request('/toy?id=a&count=7');
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      errors: [{ code: 'too-large', parameter: 'count' }],
    });
  });
  test('405 and OPTIONS', async () => {
    expect((await send('PUT', {})).status).toBe(405);
    expect((await app.request('/toy', { method: 'OPTIONS' })).status).toBe(204);
  });
  test('a bug as 500 that any page may read', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const answer = await app.request('/toy?id=a&crash=true');
    expect(answer.status).toBe(500);
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(await answer.text()).not.toContain('the inside');
    log.mockRestore();
  });
});

const toy: fc.Arbitrary<ToyRequest> = fc.record(
  {
    id: fc.stringMatching(/^[a-z0-9&=+%.½]{1,5}$/),
    count: fc.integer({ min: 1, max: 6 }),
    list: fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 3 }),
  },
  { requiredKeys: ['id'], noNullPrototype: true },
);

test('bindEndpoint: the canonical address gives the bytes that the body gave', async () => {
  await fc.assert(
    fc.asyncProperty(toy, async (input) => {
      const post = await send('POST', input);
      const get = await app.request(post.headers.get('content-location') ?? '');
      expect(get.headers.has('content-location')).toBe(false);
      expect(await get.text()).toBe(await post.text());
    }),
  );
});
