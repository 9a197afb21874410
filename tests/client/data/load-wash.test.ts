import { afterEach, describe, expect, test, vi } from 'vitest';
import { loadWash, type WashSource } from '../../../client/data/load-wash.ts';
import * as washOnDevice from '../../../client/data/wash-on-device.ts';
import { answerWash } from '../../support/wash-example.ts';

const QUERY = 'wanted.width=40&wanted.height=50';
const SOURCE: WashSource = { api: '', patience: 50, loadCore: async () => washOnDevice };
const load = (query = QUERY) => loadWash(query, SOURCE, new AbortController().signal);

describe('loadWash', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('loadWash asks /v1/wash-shrinkage', async () => {
    const fetch = vi.fn(async (_url: string) => Response.json(answerWash(QUERY)));
    vi.stubGlobal('fetch', fetch);
    expect(await load()).toMatchObject({ kind: 'answer', from: 'service' });
    expect(fetch.mock.calls[0]?.[0]).toBe(`/v1/wash-shrinkage?${QUERY}`);
  });

  test('loadWash has the device give the same answer, and the same faults', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Response.json({ ...answerWash(QUERY), pull: 1 })),
    );
    expect(await load()).toEqual({ kind: 'answer', answer: answerWash(QUERY), from: 'device' });
    expect(await load('wanted.width=wide&wanted.height=50')).toMatchObject({
      kind: 'faults',
      faults: [{ code: 'not-a-length', path: ['wanted', 'width'] }],
    });
  });
});
