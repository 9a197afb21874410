import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeQuery } from '../../../../client/data/draft.ts';
import * as onDevice from '../../../../client/data/layout-on-device.ts';
import { layoutErrand } from '../../../../client/elements/layout/layout-errand.ts';

const query = writeQuery(layoutErrand.complete({ columns: '4', rows: '4' }));
const source = { api: 'https://shop.example', patience: 50, loadCore: async () => onDevice };
const load = () => layoutErrand.load(query, source, new AbortController().signal);

describe('layoutErrand', () => {
  afterEach(() => vi.unstubAllGlobals());

  test('layoutErrand.load asks the service by its address', async () => {
    const outcome = onDevice.computeLayout(query);
    const fetch = vi.fn(async () => Response.json(outcome.ok && outcome.value));
    vi.stubGlobal('fetch', fetch);
    expect(await load()).toMatchObject({ kind: 'answer', from: 'service' });
    expect(fetch).toHaveBeenCalledWith(
      `https://shop.example/v1/layout?${query}`,
      expect.anything(),
    );
  });

  test('layoutErrand.load has the device lay the very same out where nobody answers', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    const outcome = onDevice.computeLayout(query);
    expect(await load()).toEqual({
      kind: 'answer',
      answer: outcome.ok && outcome.value,
      from: 'device',
    });
  });

  test('layoutErrand.findBlank tells of a side that was left empty', () => {
    expect(layoutErrand.findBlank({ columns: '', rows: '4' })).toEqual([
      { code: 'empty', path: ['columns'] },
    ]);
  });
});
