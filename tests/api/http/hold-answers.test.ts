import { describe, expect, test } from 'vitest';
import { holdAnswers } from '../../../api/http/hold-answers.ts';
import type { RateLimiter } from '../../../api/http/limit-rate.ts';
import { makeToyApp } from '../../support/toy-endpoint.ts';

/** The toy with a memory before it, and how often it reckoned. */
function makeHeld(bounds?: Parameters<typeof holdAnswers>[1]) {
  const reckoned: number[] = [];
  const app = makeToyApp(() => reckoned.push(1));
  const serve = holdAnswers(app.fetch, bounds);
  const ask = async (
    path: string,
    init: RequestInit = {},
    env: { RATE_LIMIT?: RateLimiter } = {},
  ) => serve(new Request(`http://x.test${path}`, init), env);
  return { ask, reckoned };
}

const essence = async (answer: Response) => [
  answer.status,
  Object.fromEntries(answer.headers),
  await answer.text(),
];

describe('holdAnswers', () => {
  test('gives again what it gave, with the same bytes and headers, and reckons once', async () => {
    const { ask, reckoned } = makeHeld();
    for (const path of ['/toy?id=a', '/toy?id=%61', '/toy?count=1&id=a']) {
      const bare = await essence(await makeToyApp().request(`http://x.test${path}`));
      for (const _ of 'abc') expect(await essence(await ask(path))).toEqual(bare);
    }
    expect(reckoned.length).toBe(3);
  });

  test('gives HEAD and 304 as the service does, from what GET left', async () => {
    const { ask, reckoned } = makeHeld();
    const etag = (await ask('/toy?id=a')).headers.get('ETag') ?? '';
    for (const init of [
      { method: 'HEAD' },
      { headers: { 'If-None-Match': etag } },
      { method: 'HEAD', headers: { 'If-None-Match': `"x", W/${etag}` } },
    ]) {
      const bare = await makeToyApp().request('http://x.test/toy?id=a', init);
      expect(await essence(await ask('/toy?id=a', init))).toEqual(await essence(bare));
    }
    expect((await ask('/toy?id=a', { headers: { 'If-None-Match': '"x"' } })).status).toBe(200);
    expect(reckoned.length).toBe(1);
  });

  test('holds a 304 too, and the answer once it was asked for', async () => {
    const { ask, reckoned } = makeHeld();
    const headers = { 'If-None-Match': '*' };
    for (const _ of 'ab') expect((await ask('/toy?id=a', { headers })).status).toBe(304);
    expect(reckoned.length).toBe(0);
    for (const _ of 'ab') expect(await (await ask('/toy?id=a')).text()).toContain('"a"');
    expect((await ask('/toy?id=a', { headers })).status).toBe(304);
    expect(reckoned.length).toBe(1);
  });

  test('holds no problem, no failure and nothing that was posted', async () => {
    const { ask, reckoned } = makeHeld();
    for (const _ of 'ab') {
      expect((await ask('/toy?id=a&count=7')).status).toBe(422);
      const headers = { 'Content-Type': 'application/json' };
      for (const method of ['POST', 'QUERY']) {
        const answer = await ask('/toy', { method, headers, body: '{"id":"a"}' });
        expect(answer.status).toBe(200);
      }
    }
    expect(reckoned.length).toBe(4);
  });

  test('counts each answer in full and refuses one too many; a 304 of what is held is free', async () => {
    const keys: string[] = [];
    const RATE_LIMIT: RateLimiter = {
      limit: async ({ key }) => ({ success: keys.push(key) <= 2 }),
    };
    const { ask } = makeHeld();
    const first = await ask('/toy?id=a', {}, { RATE_LIMIT });
    const second = await ask('/toy?id=a', {}, { RATE_LIMIT });
    expect(await essence(second)).toEqual(await essence(first));
    const headers = { 'If-None-Match': '*' };
    for (const _ of 'abc') {
      expect((await ask('/toy?id=a', { headers }, { RATE_LIMIT })).status).toBe(304);
    }
    expect(keys.length).toBe(2);
    expect((await ask('/toy?id=a', {}, { RATE_LIMIT })).status).toBe(429);
    expect((await ask('/toy?id=b', { headers }, { RATE_LIMIT })).status).toBe(429);
    expect(keys.length).toBe(4);
  });

  test('stays within its bounds', async () => {
    const { ask, reckoned } = makeHeld({ entries: 2, bytes: 1e6, largest: 1e5 });
    for (const id of 'abca') await ask(`/toy?id=${id}`);
    expect(reckoned.length).toBe(4);
  });
});
