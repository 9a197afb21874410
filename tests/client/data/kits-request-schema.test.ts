import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { checkShape } from '../../../client/data/check-shape.ts';
import { kitsRequestSchema } from '../../../client/data/kits-request-schema.ts';
import { KITS_KEYS } from '../../../client/data/names.ts';
import { kitsRequests } from '../../support/stash-and-kits-requests.ts';

const bolt = { id: 'Moss', role: 'top', width: 44, length: '8 yd' };
const plan = { target: { columns: 4, rows: 5 } };

describe('kitsRequestSchema', () => {
  test('takes every request that the service can be asked', () => {
    fc.assert(
      fc.property(kitsRequests, (request) => {
        expect(checkShape(kitsRequestSchema, request).ok).toBe(true);
      }),
    );
  });

  test.each([
    [{ plan, bolts: [] }, 'too-short'],
    [{ plan, bolts: [bolt], costs: { margin: 100 } }, 'too-large'],
    [{ plan, bolts: [bolt], costs: { price: 1.5 } }, 'not-whole'],
    [{ plan, bolts: [bolt], kits: 0 }, 'too-small'],
    [{ bolts: [bolt] }, 'missing'],
    [{ plan, bolts: [{ ...bolt, shelf: 3 }] }, 'unknown-key'],
  ])('refuses %j as the service does', async (request, code) => {
    const checked = checkShape(kitsRequestSchema, request);
    expect(!checked.ok && checked.faults[0]?.code).toBe(code);
    const headers = { 'Content-Type': 'application/json' };
    const body = JSON.stringify(request);
    const answer = await app.request('/v1/kits', { method: 'POST', headers, body });
    expect((await answer.json()).errors[0].code).toBe(code);
  });

  test('KITS_KEYS are those of a request', () => {
    expect(KITS_KEYS).toEqual(Object.keys(kitsRequestSchema.entries));
  });
});
