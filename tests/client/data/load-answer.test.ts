import { afterEach, describe, expect, test, vi } from 'vitest';
import { loadAnswer, type Question, type Source } from '../../../client/data/load-answer.ts';

const QUESTION: Question<number, { readonly half: number }> = {
  address: '/v1/half?of=8',
  isAnswer: (body) => typeof body === 'number',
  compute: ({ half }) => ({ ok: true, value: 8 * half }),
};
const SOURCE: Source<{ readonly half: number }> = {
  api: 'https://planner.example',
  patience: 50,
  loadCore: async () => ({ half: 0.5 }),
};
const ask = (change: Partial<typeof SOURCE> = {}) =>
  loadAnswer(QUESTION, { ...SOURCE, ...change }, new AbortController().signal);
const answer = (body: unknown, status = 200) =>
  vi.fn(async (_url: string) => new Response(JSON.stringify(body), { status }));

describe('loadAnswer', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('loadAnswer takes the answer of the service where all is there that is read', async () => {
    const fetch = answer(4);
    vi.stubGlobal('fetch', fetch);
    expect(await ask()).toEqual({ kind: 'answer', answer: 4, from: 'service' });
    expect(fetch.mock.calls[0]?.[0]).toBe('https://planner.example/v1/half?of=8');
  });

  test('loadAnswer fetches what works without a network once the service answered, where asked to', async () => {
    vi.stubGlobal('fetch', answer(4));
    const loadCore = vi.fn(SOURCE.loadCore);
    await ask({ loadCore });
    await new Promise((done) => setTimeout(done, 20));
    expect(loadCore).not.toHaveBeenCalled();
    await ask({ loadCore, isAhead: true });
    await expect.poll(() => loadCore.mock.calls.length).toBe(1);
  });

  test('loadAnswer takes no harm where that cannot be fetched', async () => {
    vi.stubGlobal('fetch', answer(4));
    const loadCore = vi.fn(() => Promise.reject(new Error('none')));
    expect(await ask({ loadCore, isAhead: true })).toMatchObject({ kind: 'answer' });
    await expect.poll(() => loadCore.mock.calls.length).toBe(1);
  });

  test.each([
    ['cannot be read', answer('four')],
    ['tells of a breakdown', answer({ errors: [{ code: 'internal' }] }, 500)],
  ])('loadAnswer asks the device where what the service says %s', async (_case, fetch) => {
    vi.stubGlobal('fetch', fetch);
    expect(await ask()).toEqual({ kind: 'answer', answer: 4, from: 'device' });
  });

  test('loadAnswer tells the faults of the service', async () => {
    vi.stubGlobal('fetch', answer({ errors: [{ code: 'empty', pointer: '/of' }] }, 422));
    expect(await ask()).toEqual({ kind: 'faults', faults: [{ code: 'empty', path: ['of'] }] });
  });

  test.each([
    ['strange', answer('four')],
    ['strange', answer({ detail: 'no faults' }, 404)],
    ['strange', vi.fn(async () => new Response('<p>Sign in to this network.'))],
    ['busy', answer('', 429)],
    ['broken', answer('', 500)],
    ['silent', vi.fn(() => Promise.reject(new TypeError('Failed to fetch')))],
  ])('loadAnswer tells why nobody can be asked: %s', async (trouble, fetch) => {
    vi.stubGlobal('fetch', fetch);
    const loadCore = () => Promise.reject(new Error('none'));
    expect(await ask({ loadCore })).toEqual({ kind: 'unreachable', trouble });
  });
});
