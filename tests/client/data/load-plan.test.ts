import { afterEach, describe, expect, test, vi } from 'vitest';
import { loadPlan, type PlanSource } from '../../../client/data/load-plan.ts';
import * as onDevice from '../../../client/data/on-device.ts';
import { planThrow } from '../../support/plan-throw.ts';

const QUERY = 'target.size=throw';
const loadCore = vi.fn(async () => onDevice);
const SOURCE: PlanSource = { api: 'https://planner.example', patience: 50, loadCore };
const signal = () => new AbortController().signal;
const answer = (body: unknown, status = 200) =>
  vi.fn(async (_url: string) => new Response(JSON.stringify(body), { status }));

describe('loadPlan', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    loadCore.mockClear();
  });

  test('loadPlan asks the service by GET and takes its plan', async () => {
    const fetch = answer(planThrow());
    vi.stubGlobal('fetch', fetch);
    const loaded = await loadPlan(QUERY, SOURCE, signal());
    expect(fetch.mock.calls[0]?.[0]).toBe('https://planner.example/v1/plan?target.size=throw');
    expect(loaded).toMatchObject({ kind: 'answer', from: 'service' });
    expect(loadCore).not.toHaveBeenCalled();
  });

  test('loadPlan passes on all that the service answered, read or not', async () => {
    vi.stubGlobal('fetch', answer(planThrow()));
    const loaded = await loadPlan(QUERY, SOURCE, signal());
    expect(loaded.kind === 'answer' && loaded.answer).toEqual(
      JSON.parse(JSON.stringify(planThrow())),
    );
  });

  test('loadPlan takes the faults of a problem', async () => {
    const errors = [{ code: 'too-small', pointer: '/target/width', expected: '5.91 in' }];
    vi.stubGlobal('fetch', answer({ errors }, 422));
    expect(await loadPlan(QUERY, SOURCE, signal())).toEqual({
      kind: 'faults',
      faults: [{ code: 'too-small', path: ['target', 'width'], expected: '5.91 in' }],
    });
  });

  test.each([
    ['no network', vi.fn(async () => Promise.reject(new TypeError('Failed to fetch')))],
    ['a broken service', answer({ errors: [{ code: 'internal', pointer: '' }] }, 500)],
    ['a plan that lacks a part', answer({ ...planThrow(), size: undefined })],
    ['an answer that is no JSON', vi.fn(async () => new Response('<html>', { status: 200 }))],
    ['a refusal that says nothing', answer({}, 403)],
  ])('loadPlan has the device work it out where there is %s', async (_case, fetch) => {
    vi.stubGlobal('fetch', fetch);
    expect(await loadPlan(QUERY, SOURCE, signal())).toEqual({
      kind: 'answer',
      answer: planThrow(),
      from: 'device',
    });
  });

  test('loadPlan waits no longer than its patience', async () => {
    const never = (_url: string, { signal: given }: RequestInit) =>
      new Promise((_, reject) => given?.addEventListener('abort', () => reject(given.reason)));
    vi.stubGlobal('fetch', vi.fn(never));
    const start = performance.now();
    const loaded = await loadPlan(QUERY, SOURCE, signal());
    expect(loaded).toMatchObject({ kind: 'answer', from: 'device' });
    expect(performance.now() - start).toBeLessThan(2000);
  });

  test('loadPlan finds on the device what is wrong with the wish', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Promise.reject(new TypeError('no'))),
    );
    const loaded = await loadPlan('target.size=lap&block.seam=wide', SOURCE, signal());
    expect(loaded).toMatchObject({ kind: 'faults', faults: [{ code: 'not-a-length' }] });
  });

  test('loadPlan says so where neither the service nor the core is to be had', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Promise.reject(new TypeError('no'))),
    );
    const source = { ...SOURCE, loadCore: () => Promise.reject(new Error('none')) };
    expect(await loadPlan(QUERY, source, signal())).toEqual({
      kind: 'unreachable',
      trouble: 'silent',
    });
  });

  test('loadPlan rejects when a newer wish stops it', async () => {
    vi.stubGlobal('fetch', answer(planThrow()));
    const newer = new AbortController();
    const loading = loadPlan(QUERY, SOURCE, newer.signal);
    newer.abort();
    await expect(loading).rejects.toThrow();
  });
});
