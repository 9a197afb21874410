import { readFileSync } from 'node:fs';
import { parse } from 'smol-toml';
import { describe, expect, test } from 'vitest';
import { RATE_LIMIT, RATE_LIMIT_POLICY, type RateLimiter } from '../../../api/http/limit-rate.ts';
import { makeToyApp } from '../../support/toy-endpoint.ts';

/** A limiter that lets so many pass, and who was counted. */
function makeLimiter(most: number) {
  const keys: string[] = [];
  const RATE_LIMIT: RateLimiter = {
    limit: async ({ key }) => ({ success: keys.push(key) <= most }),
  };
  return { keys, env: { RATE_LIMIT } };
}

describe('limitRate', () => {
  test('answers one too many with a problem of 429 that says when to come again', async () => {
    const { env } = makeLimiter(2);
    const app = makeToyApp();
    const statuses: number[] = [];
    for (const _ of 'abc') statuses.push((await app.request('/toy?id=a', {}, env)).status);
    expect(statuses).toEqual([200, 200, 429]);
    const answer = await app.request('/toy?id=a', {}, env);
    expect(answer.headers.get('retry-after')).toBe('60');
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(await answer.json()).toMatchObject({ type: '/problems/too-many-requests', status: 429 });
  });

  test('tells the policy on every answer that it counts, a problem too', async () => {
    const { env } = makeLimiter(9);
    for (const path of ['/toy?id=a', '/toy?none=1']) {
      const answer = await makeToyApp().request(path, {}, env);
      expect(answer.headers.get('ratelimit-policy')).toBe(RATE_LIMIT_POLICY);
    }
  });

  test('counts what is at fault and what the caller says to hold', async () => {
    const { env, keys } = makeLimiter(2);
    const ask = (path: string) =>
      makeToyApp().request(path, { headers: { 'If-None-Match': '*' } }, env);
    expect((await ask('/toy?id=a')).status).toBe(304);
    expect((await ask('/toy?none=1')).status).toBe(422);
    expect((await ask('/toy?none=1')).status).toBe(429);
    expect(keys.length).toBe(3);
  });

  test('reckons nothing for one too many', async () => {
    const { env } = makeLimiter(0);
    const app = makeToyApp(() => {
      throw new Error('reckoned');
    });
    const headers = { 'If-None-Match': '"x"' };
    expect((await app.request('/toy?id=a', {}, env)).status).toBe(429);
    expect((await app.request('/toy?id=a', { headers }, env)).status).toBe(429);
  });

  test('tells callers apart by the address that the platform gives', async () => {
    const { env, keys } = makeLimiter(9);
    const headers = { 'CF-Connecting-IP': '192.0.2.7' };
    await makeToyApp().request('/toy?id=a', { headers }, env);
    await makeToyApp().request('/toy?id=a', {}, env);
    expect(keys).toEqual(['192.0.2.7', 'everyone']);
  });

  test('without a limiter limits nothing and says so by silence', async () => {
    const answer = await makeToyApp().request('/toy?id=a');
    expect(answer.status).toBe(200);
    expect(answer.headers.has('ratelimit-policy')).toBe(false);
  });
});

test('RATE_LIMIT is what wrangler.toml tells the platform', () => {
  const file = readFileSync(new URL('../../../wrangler.toml', import.meta.url), 'utf8');
  const { ratelimits } = parse(file) as unknown as { ratelimits: readonly object[] };
  expect(ratelimits).toMatchObject([{ name: 'RATE_LIMIT', simple: RATE_LIMIT }]);
});

test('RATE_LIMIT_POLICY is a list of one string with two whole numbers, as RFC 9651 writes it', () => {
  expect(RATE_LIMIT_POLICY).toMatch(/^"[ !#-[\]-~]+";q=\d{1,15};w=\d{1,15}$/);
});
