import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { checkShape } from '../../../client/data/check-shape.ts';
import { STASH_KEYS } from '../../../client/data/names.ts';
import { stashRequestSchema } from '../../../client/data/stash-request-schema.ts';
import { stashRequests } from '../../support/stash-and-kits-requests.ts';

const piece = { id: 'Moss', role: 'top', width: 44, length: '1 yd' };

describe('stashRequestSchema', () => {
  test('takes every request that the service can be asked', () => {
    fc.assert(
      fc.property(stashRequests, (request) => {
        expect(checkShape(stashRequestSchema, request).ok).toBe(true);
      }),
    );
  });

  test.each([
    [{ pieces: [] }, 'too-short'],
    [{ pieces: Array(61).fill(piece) }, 'too-long'],
    [{ pieces: [{ ...piece, count: 0 }] }, 'too-small'],
    [{ pieces: [{ ...piece, role: 'hem' }] }, 'not-one-of'],
    [{ pieces: [{ ...piece, colour: 'moss' }] }, 'unknown-key'],
    [{ pieces: [{ ...piece, width: undefined }] }, 'missing'],
  ])('refuses %j as the service does', async (request, code) => {
    const checked = checkShape(stashRequestSchema, JSON.parse(JSON.stringify(request)));
    expect(!checked.ok && checked.faults[0]?.code).toBe(code);
    const headers = { 'Content-Type': 'application/json' };
    const body = JSON.stringify(request);
    const answer = await app.request('/v1/stash', { method: 'POST', headers, body });
    expect((await answer.json()).errors[0].code).toBe(code);
  });

  test('STASH_KEYS are those of a request', () => {
    expect(STASH_KEYS).toEqual(Object.keys(stashRequestSchema.entries));
  });
});
