import { Hono } from 'hono';
import { describe, expect, test, vi } from 'vitest';
import type { BatchAnswer, BatchFailure, BatchSuccess } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { app } from '../../../api/app.ts';
import { bindBatch } from '../../../api/endpoints/batch.ts';
import type { BoundEndpoint } from '../../../api/http/bind-endpoint.ts';
import type { Surroundings } from '../../../api/http/limit-rate.ts';
import { bindToy } from '../../support/toy-endpoint.ts';

const headers = { 'Content-Type': 'application/json' };
const send = (path: string, input: unknown, to: Pick<typeof app, 'request'> = app) =>
  to.request(path, { method: 'POST', headers, body: JSON.stringify(input) });
const wish = { target: { width: 40, height: 50 } };
const plan = { path: '/v1/plan', input: wish };

function makeBatch(over: Partial<BoundEndpoint> = {}) {
  const small = new Hono<Surroundings>();
  bindBatch([{ ...bindToy(), ...over }]).mount(small);
  return small;
}

describe('POST /v1/batch', () => {
  test('answers each request to the byte as its own endpoint does, in order', async () => {
    const swatch = { direction: 'length', before: 10, after: 9.5 };
    const requests = [
      { path: '/v1/wash-shrinkage', input: { swatches: [swatch] } },
      plan,
      { path: '/v1/plan.svg', input: wish },
    ];
    const text = await (await send('/v1/batch', { requests })).text();
    const { answers } = JSON.parse(text) as BatchAnswer;
    for (const [at, { path, input }] of requests.entries()) {
      const alone = await send(path, input);
      const told = answers[at] as BatchSuccess;
      const body = await alone.text();
      expect(told).toMatchObject({ status: 200, path, etag: alone.headers.get('etag') });
      expect(`${path}?${told.query}`).toBe(alone.headers.get('content-location'));
      expect(text).toContain(`"answer":${path.endsWith('.svg') ? JSON.stringify(body) : body}`);
    }
  });

  test('tells what is wrong with one in its place, and answers the others', async () => {
    const faulty = { path: '/v1/plan', input: { ...wish, spare: 300, washes: 0 } };
    const answer = await send('/v1/batch', { requests: [plan, faulty, plan] });
    const { answers } = (await answer.json()) as BatchAnswer;
    expect(answers.map(({ status }) => status)).toEqual([200, 422, 200]);
    const { problem } = answers[1] as BatchFailure;
    expect(problem).toEqual(await (await send('/v1/plan', faulty.input)).json());
  });

  test('answers a mistake of the service in its place too, and tells nothing of the inside', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const requests = [
      { path: '/toy', input: { id: 'a', crash: true } },
      { path: '/toy', input: { id: 'a' } },
    ];
    const text = await (await send('/v1/batch', { requests }, makeBatch())).text();
    const { answers } = JSON.parse(text) as BatchAnswer;
    expect(answers.map(({ status }) => status)).toEqual([500, 200]);
    expect(text).not.toContain('the inside');
    expect(log).toHaveBeenCalledOnce();
    log.mockRestore();
  });

  test('answers 50 requests, and refuses 51 and none', async () => {
    const requests = (count: number) =>
      Array.from({ length: count }, () => ({ path: '/toy', input: { id: 'a' } }));
    const cheap = makeBatch({ understand: (input) => priced(input, 1) });
    const full = await send('/v1/batch', { requests: requests(SIZE_LIMITS.batch) }, cheap);
    expect(((await full.json()) as BatchAnswer).answers).toHaveLength(SIZE_LIMITS.batch);
    for (const [count, code] of [
      [SIZE_LIMITS.batch + 1, 'too-long'],
      [0, 'too-short'],
    ] as const) {
      const answer = await send('/v1/batch', { requests: requests(count) }, cheap);
      expect(answer.status).toBe(422);
      expect(await answer.json()).toMatchObject({ errors: [{ code, pointer: '/requests' }] });
    }
  });

  test('refuses a batch whose costs come to too much, before anything is reckoned', async () => {
    const write = () => {
      throw new Error('reckoned');
    };
    const dear = makeBatch({
      understand: (input) => {
        const one = priced(input, SIZE_LIMITS.batchCost / 2 + 0.1);
        return one.ok ? { ok: true, value: { ...one.value, write } } : one;
      },
    });
    const requests = [
      { path: '/toy', input: { id: 'a' } },
      { path: '/toy', input: { id: 'b' } },
    ];
    const answer = await send('/v1/batch', { requests }, dear);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      errors: [{ code: 'too-large', pointer: '/requests', received: SIZE_LIMITS.batchCost + 1 }],
    });
  });

  test.each([
    [{ requests: [{ path: '/v1/none', input: {} }] }, 'not-one-of', '/requests/0/path'],
    [
      { requests: [{ path: '/v1/batch', input: { requests: [] } }] },
      'not-one-of',
      '/requests/0/path',
    ],
    [{ requests: [{ path: '/v1/plan', input: [] }] }, 'wrong-type', '/requests/0/input'],
    [{ requests: [{ path: '/v1/plan', input: {}, id: 1 }] }, 'unknown-key', '/requests/0/id'],
    [{}, 'missing', '/requests'],
  ])('refuses %j', async (body, code, pointer) => {
    const answer = await send('/v1/batch', body);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ errors: [{ code, pointer }] });
  });

  test('is not there for GET', async () => {
    const answer = await app.request('/v1/batch');
    expect([answer.status, answer.headers.get('allow')]).toEqual([405, 'POST, OPTIONS']);
  });
});

function priced(input: unknown, cost: number): ReturnType<BoundEndpoint['understand']> {
  const understood = bindToy().understand(input);
  return understood.ok ? { ok: true, value: { ...understood.value, cost } } : understood;
}
