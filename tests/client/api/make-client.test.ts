import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { app } from '../../../api/app.ts';
import { type ClientOptions, makeClient } from '../../../client/api/make-client.ts';
import { ProblemError, UnreachableError } from '../../../client/api/problem-error.ts';

const origin = 'http://quilts.example';
const wish: PlanRequest = { target: { width: 40, height: 50 } };

/** A client of the service itself, and what it asked. */
function makeAsker(own: Partial<ClientOptions> = {}) {
  const asked: [string, string][] = [];
  const fetch = async (address: string, init: RequestInit) => {
    asked.push([init.method ?? 'GET', address]);
    return app.request(address, init);
  };
  return { asked, client: makeClient({ origin, fetch, ...own }) };
}

/** A service that is busy so many times before it answers. */
function makeBusy(times: number, status: number, headers: Record<string, string> = {}) {
  let asked = 0;
  const fetch = async (address: string, init: RequestInit) => {
    asked += 1;
    return asked > times ? app.request(address, init) : new Response(null, { status, headers });
  };
  return { count: () => asked, client: makeClient({ origin, fetch }) };
}

describe('makeClient', () => {
  test('asks by GET at the canonical address, where any cache may answer', async () => {
    const { asked, client } = makeAsker();
    const plan = await client.ask('/v1/plan', wish);
    expect(plan.grid.blocks).toBe(plan.grid.columns * plan.grid.rows);
    expect(asked).toEqual([['GET', `${origin}${plan.links.self}`]]);
  });

  test('asks by POST what makes too long an address, and a batch', async () => {
    const { asked, client } = makeAsker();
    const prints = Array.from({ length: 26 }, (_, at) => ({ id: `${at} ${'é'.repeat(30)}` }));
    await client.ask('/v1/plan', {
      ...wish,
      layers: [{ role: 'top', prints }, { role: 'backing' }],
    });
    const requests = [{ path: '/v1/plan', input: { ...wish } }];
    const { answers } = await client.ask('/v1/batch', { requests });
    expect(answers[0]?.status).toBe(200);
    expect(asked.map(([method]) => method)).toEqual(['POST', 'POST']);
  });

  test('throws what the service says is wrong', async () => {
    const { client } = makeAsker();
    const failure = await client.ask('/v1/plan', { ...wish, spare: 300 }).catch((error) => error);
    if (!(failure instanceof ProblemError)) throw failure;
    expect(failure.problem.errors[0]).toMatchObject({ code: 'too-large', parameter: 'spare' });
  });

  test.each([429, 503])('tries again after %i', async (status) => {
    const { client, count } = makeBusy(2, status, { 'Retry-After': '0' });
    expect((await client.ask('/v1/plan', wish)).engine).toMatch(/^\d/);
    expect(count()).toBe(3);
  });

  test.each([500, 502, 422, 404])('does not try again after %i', async (status) => {
    const { client, count } = makeBusy(1, status);
    await expect(client.ask('/v1/plan', wish)).rejects.toThrow(String(status));
    expect(count()).toBe(1);
  });

  test('gives up after its tries, and at once where it would wait too long', async () => {
    const often = makeBusy(9, 503, { 'Retry-After': '0' });
    await expect(often.client.ask('/v1/plan', wish)).rejects.toThrow(UnreachableError);
    expect(often.count()).toBe(3);
    const long = makeBusy(9, 503, { 'Retry-After': '3600' });
    await expect(long.client.ask('/v1/plan', wish)).rejects.toThrow('503');
    expect(long.count()).toBe(1);
  });

  test('says so where no answer comes in time, and where the network fails', async () => {
    const never = (_: string, { signal }: RequestInit) =>
      new Promise<Response>((_, reject) => {
        signal?.addEventListener('abort', () => reject(signal.reason));
      });
    const slow = makeClient({ origin, fetch: never, timeout: 20 });
    await expect(slow.ask('/v1/plan', wish)).rejects.toThrow('No answer came within 20 ms.');
    const broken = makeClient({ origin, fetch: () => Promise.reject(new TypeError('no route')) });
    await expect(broken.ask('/v1/plan', wish)).rejects.toThrow(UnreachableError);
  });

  test('stops when it is told to, with the reason that it is given', async () => {
    const control = new AbortController();
    const { client } = makeBusy(9, 503, { 'Retry-After': '20' });
    const asked = client.ask('/v1/plan', wish, { signal: control.signal });
    setTimeout(() => control.abort(new Error('left the page')), 10);
    await expect(asked).rejects.toThrow('left the page');
  });

  test('takes what cannot be read for no answer', async () => {
    const fetch = async () => new Response('<html>', { status: 200 });
    await expect(makeClient({ origin, fetch }).ask('/v1/plan', wish)).rejects.toThrow(
      UnreachableError,
    );
  });

  test('gives addresses for links and pictures', async () => {
    const { client } = makeAsker({ origin: `${origin}/` });
    const address = client.address('/v1/plan.svg', wish);
    expect((await app.request(address)).headers.get('content-type')).toBe('image/svg+xml');
  });
});
