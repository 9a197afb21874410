import { describe, expect, test } from 'vitest';
import type { WashAnswer } from '#core/contract.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { app } from '../../../api/app.ts';

const swatch = { direction: 'length' as const, before: 10, after: 9.5 };
const send = (input: unknown) =>
  app.request('/v1/wash-shrinkage', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/wash-shrinkage', () => {
  test('answers the very bytes that the core makes of the request', async () => {
    const request = { swatches: [swatch], sewn: { width: 40, height: 50 } };
    const resolved = resolveWash(request);
    if (!resolved.ok) throw new Error('refused');
    expect(await (await send(request)).text()).toBe(JSON.stringify(predictWash(resolved.value)));
  });
  test('says 10 in that became 9.5 in as a change of −5 %, the sign of ISO 5077', async () => {
    const body = (await (await send({ swatches: [swatch] })).json()) as WashAnswer;
    expect(body.swatches).toMatchObject([{ direction: 'length', change: -5, n: 1 }]);
  });
  test.each([
    [{ swatches: [{ ...swatch, after: 25 }] }, 'after-unlikely', '/swatches/0/after'],
    [{ swatches: [{ ...swatch, direction: 'up' }] }, 'not-one-of', '/swatches/0/direction'],
    [{ swatches: Array.from({ length: 61 }, () => swatch) }, 'too-long', '/swatches'],
    [{ confidence: 91 }, 'not-one-of', '/confidence'],
    [{ washes: [0] }, 'too-small', '/washes/0'],
    [{ washes: [] }, 'too-short', '/washes'],
    [{ sewn: { width: 40 } }, 'missing', '/sewn/height'],
    [{ layers: [{ role: 'top' }, { role: 'top' }] }, 'layers-unfit', '/layers'],
  ])('answers %j with %s at %s', async (input, code, pointer) => {
    const answer = await send(input);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ errors: [{ code, pointer }] });
  });
});
