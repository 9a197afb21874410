import { afterEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../client/data/kits-on-device.ts';
import { loadKits } from '../../../client/data/load-kits.ts';
import { FIRST_DRAFT, writeAsked } from '../../../client/elements/kits/kits-state.ts';
import { answerKits } from '../../support/stock.ts';

const { query } = writeAsked(FIRST_DRAFT);
const source = { api: 'https://shop.example', patience: 50, loadCore: async () => onDevice };
const load = (asked: string) => loadKits(asked, source, new AbortController().signal);
const stub = (fetch: (url: string, options?: RequestInit) => Promise<Response>) => {
  const asked = vi.fn(fetch);
  vi.stubGlobal('fetch', asked);
  return asked;
};

describe('loadKits', () => {
  afterEach(() => vi.unstubAllGlobals());

  test('loadKits asks the service by its address', async () => {
    const fetch = stub(async () => Response.json(answerKits()));
    expect(await load(query)).toMatchObject({ kind: 'answer', from: 'service' });
    expect(fetch.mock.calls[0]?.[0]).toBe(`https://shop.example/v1/kits?${query}`);
  });

  test('loadKits posts what is too long for an address', async () => {
    const fetch = stub(async () => Response.json(answerKits()));
    await load(`${query}&${'x'.repeat(9000)}=1`);
    const [address, options] = fetch.mock.calls[0] ?? [];
    expect(address).toBe('https://shop.example/v1/kits');
    expect(options?.method).toBe('POST');
    expect(JSON.parse(String(options?.body))).toHaveProperty('bolts');
  });

  test('loadKits has the device work it out where the service is silent or talks nonsense', async () => {
    for (const fetch of [
      async () => Promise.reject(new TypeError('Failed to fetch')),
      async () => Response.json({ half: true }),
    ]) {
      stub(fetch);
      expect(await load(query)).toEqual({ kind: 'answer', answer: answerKits(), from: 'device' });
    }
  });

  test('loadKits tells the faults of the service', async () => {
    stub(async () =>
      Response.json({ errors: [{ code: 'empty', pointer: '/unit' }] }, { status: 422 }),
    );
    expect(await load(query)).toEqual({
      kind: 'faults',
      faults: [{ code: 'empty', path: ['unit'] }],
    });
  });
});
