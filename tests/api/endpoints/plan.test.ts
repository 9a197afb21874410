import { describe, expect, test } from 'vitest';
import type { PlanAnswer, PlanRequest } from '#core/contract.ts';
import { ENGINE } from '#core/engine.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { app } from '../../../api/app.ts';

const send = (input: unknown) =>
  app.request('/v1/plan', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/plan', () => {
  test('answers the very bytes that the core makes of the request', async () => {
    const request: PlanRequest = { target: { width: 40, height: '50 in' }, explain: true };
    const resolved = resolvePlan(request);
    if (!resolved.ok) throw new Error('refused');
    const answer = await send(request);
    expect(answer.headers.get('content-type')).toBe('application/json');
    expect(await answer.text()).toBe(JSON.stringify(planQuilt(resolved.value)));
  });
  test('names the engine, and its own address as the canonical one', async () => {
    const answer = await app.request('/v1/plan?target.height=50.0&target.width=40&unit=in');
    const body = (await answer.json()) as PlanAnswer;
    expect(body.engine).toBe(ENGINE);
    expect(body.links.self).toBe('/v1/plan?target.width=40&target.height=50');
    expect(answer.headers.get('content-location')).toBe(body.links.self);
  });
  test('tells every fault at once, in the caller’s unit, with what would be right', async () => {
    const answer = await send({
      unit: 'cm',
      target: { width: 'wide', height: 900 },
      spare: 101,
      grain: 'sideways',
      extra: 1,
    });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      type: '/problems/several-faults',
      errors: [
        { code: 'not-one-of', pointer: '/grain', expected: ['alternating', 'aligned'] },
        { code: 'too-large', pointer: '/spare', expected: 100, received: 101 },
        { code: 'unknown-key', pointer: '/extra' },
        { code: 'not-a-length', pointer: '/target/width', received: 'wide' },
        { code: 'too-large', pointer: '/target/height', expected: '500 cm', received: 900 },
      ],
    });
  });
  test('tells every fault of a query that cannot be read whole', async () => {
    const query = 'target.width=0x10&target.height=&foo=1&target.width=3&target.%FFheight=4';
    const answer = await app.request(`/v1/plan?${query}`);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({
      type: '/problems/several-faults',
      errors: [
        { code: 'repeated-key', pointer: '/target/width', parameter: 'target.width' },
        { code: 'malformed-query', pointer: '/target/%FFheight' },
        { code: 'empty', pointer: '/target/height' },
        { code: 'unknown-key', pointer: '/foo' },
        { code: 'not-a-length', pointer: '/target/width', received: '0x10' },
      ],
    });
  });
  test.each([
    ['target.size=throw&target.width=40', 'target-unclear', '/target'],
    ['', 'target-unclear', '/target'],
    ['target.width=40', 'missing', '/target/height'],
    ['target.width=40&target.height=50&target.colour=1', 'unknown-key', '/target/colour'],
    ['target.width=40&target.height=50&block.cut=4&block.seam=2', 'seam-eats-face', '/block/seam'],
    [
      'target.width=40&target.height=50&block.snipDepth=1.5',
      'snips-reach-stitching',
      '/block/snipDepth',
    ],
    ['target.size=queen&target.region=uk', 'size-not-in-region', '/target/size'],
  ])('answers ?%s with %s at %s', async (query, code, pointer) => {
    const answer = await app.request(`/v1/plan?${query}`);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      type: `/problems/${code}`,
      errors: [{ code, pointer }],
    });
  });
});
