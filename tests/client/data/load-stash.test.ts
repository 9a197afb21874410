import { afterEach, describe, expect, test, vi } from 'vitest';
import { loadStash } from '../../../client/data/load-stash.ts';
import * as onDevice from '../../../client/data/stash-on-device.ts';
import { FIRST_DRAFT, writeAsked } from '../../../client/elements/stash/stash-state.ts';
import { answerStash } from '../../support/stock.ts';

const { query } = writeAsked(FIRST_DRAFT);
const source = { api: 'https://shop.example', patience: 50, loadCore: async () => onDevice };
const load = (asked: string) => loadStash(asked, source, new AbortController().signal);
const stub = (fetch: (url: string, options?: RequestInit) => Promise<Response>) => {
  const asked = vi.fn(fetch);
  vi.stubGlobal('fetch', asked);
  return asked;
};

describe('loadStash', () => {
  afterEach(() => vi.unstubAllGlobals());

  test('loadStash asks the service by its address', async () => {
    const fetch = stub(async () => Response.json(answerStash()));
    expect(await load(query)).toMatchObject({ kind: 'answer', from: 'service' });
    expect(fetch.mock.calls[0]?.[0]).toBe(`https://shop.example/v1/stash?${query}`);
  });

  test('loadStash posts what is too long for an address', async () => {
    const fetch = stub(async () => Response.json(answerStash()));
    await load(`${query}&${'x'.repeat(9000)}=1`);
    const [address, options] = fetch.mock.calls[0] ?? [];
    expect(address).toBe('https://shop.example/v1/stash');
    expect(options?.method).toBe('POST');
    expect(JSON.parse(String(options?.body))).toHaveProperty('pieces');
  });

  test('loadStash has the device work it out where the service is silent or talks nonsense', async () => {
    for (const fetch of [
      async () => Promise.reject(new TypeError('Failed to fetch')),
      async () => Response.json({ half: true }),
    ]) {
      stub(fetch);
      expect(await load(query)).toEqual({ kind: 'answer', answer: answerStash(), from: 'device' });
    }
  });

  test('loadStash tells the faults of the service', async () => {
    stub(async () =>
      Response.json({ errors: [{ code: 'empty', pointer: '/unit' }] }, { status: 422 }),
    );
    expect(await load(query)).toEqual({
      kind: 'faults',
      faults: [{ code: 'empty', path: ['unit'] }],
    });
  });
});
