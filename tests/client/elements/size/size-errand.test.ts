import { afterEach, describe, expect, test, vi } from 'vitest';
import { computePlan } from '../../../../client/data/on-device.ts';
import { sizeErrand } from '../../../../client/elements/size/size-errand.ts';

const load = (query: string) =>
  sizeErrand.load(
    query,
    { api: 'https://planner.example', patience: 50, loadCore: async () => ({ computePlan }) },
    new AbortController().signal,
  );

describe('sizeErrand', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('sizeErrand begins with a throw where nothing of a size was said', () => {
    expect(sizeErrand.complete({ 'block.cut': '8' })).toEqual({
      'block.cut': '8',
      'target.size': 'throw',
    });
    expect(sizeErrand.complete({ 'target.columns': '4' })).toEqual({ 'target.columns': '4' });
  });

  test('sizeErrand asks /v1/plan, and the device where an answer lacks what is shown', async () => {
    const fetch = vi.fn(async (_url: string) => Response.json({ grid: {} }));
    vi.stubGlobal('fetch', fetch);
    expect(await load('target.size=lap')).toMatchObject({ kind: 'answer', from: 'device' });
    expect(fetch.mock.calls[0]?.[0]).toBe('https://planner.example/v1/plan?target.size=lap');
  });
});
