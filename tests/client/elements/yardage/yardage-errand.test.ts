import { afterEach, describe, expect, test, vi } from 'vitest';
import { writeQuery } from '../../../../client/data/draft.ts';
import { computeYardage } from '../../../../client/data/yardage-on-device.ts';
import { yardageErrand } from '../../../../client/elements/yardage/yardage-errand.ts';

describe('yardageErrand', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  test('yardageErrand begins with squares on a bolt, in the unit of the draft', () => {
    const start = yardageErrand.complete({});
    expect(computeYardage(writeQuery(start)).ok).toBe(true);
    expect(yardageErrand.complete({ unit: 'cm' })).toMatchObject({
      unit: 'cm',
      'fabrics.0.width': '110',
      'fabrics.0.pieces.0.width': '21.5',
    });
  });

  test('yardageErrand leaves what the host said as it is', () => {
    const host = { 'fabrics.0.pieces.0.id': 'patch', 'fabrics.0.width': '60' };
    expect(yardageErrand.complete(host)).toEqual({ ...host, 'fabrics.0.id': 'cloth' });
  });

  test('yardageErrand asks /v1/yardage', async () => {
    const fetch = vi.fn(async (_url: string) => Response.json({}, { status: 500 }));
    vi.stubGlobal('fetch', fetch);
    const source = {
      api: 'https://planner.example',
      patience: 50,
      loadCore: () => Promise.reject(new Error('none')),
    };
    const asked = yardageErrand.load('fabrics.0.id=a', source, new AbortController().signal);
    expect(await asked).toEqual({ kind: 'unreachable', trouble: 'broken' });
    expect(fetch.mock.calls[0]?.[0]).toBe('https://planner.example/v1/yardage?fabrics.0.id=a');
  });
});
