import { describe, expect, test } from 'vitest';
import type { KitsAnswer, KitsRequest } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { app } from '../../../api/app.ts';

const plan = { target: { columns: 4, rows: 5 }, block: { cut: 8.5 } };
const bolt = { id: 'rust', role: 'top', width: 44, length: 360, cost: 900 } as const;
const backing = { id: 'flannel', role: 'backing', width: 44, length: 720, cost: 600 } as const;
const good: KitsRequest = { plan, bolts: [bolt, backing] };
const send = (input: unknown) =>
  app.request('/v1/kits', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/kits', () => {
  test('answers the very bytes that the core makes of the request', async () => {
    const resolved = resolveKits(good);
    if (!resolved.ok) throw new Error('refused');
    const answer = await send(good);
    expect(answer.headers.get('content-type')).toBe('application/json');
    expect(await answer.text()).toBe(JSON.stringify(planKits(resolved.value)));
  });
  test('ten yards of 44 in are 42 strips of 5, ten kits of 20', async () => {
    const answer = (await (await send(good)).json()) as KitsAnswer;
    expect(answer).toMatchObject({ most: 10, limitedBy: ['top'], squares: 20 });
    expect(answer.links.self).toMatch(/^\/v1\/kits\?plan\.target\.columns=4&/);
  });
  test('takes a query, where prints and fibres are text', async () => {
    const query =
      'plan.target.columns=4&plan.target.rows=5&bolts.0.id=1&bolts.0.print=2&bolts.0.role=top' +
      '&bolts.0.width=44&bolts.0.length=10%20yd&fibres.top.0.fibre=3&fibres.top.0.percent=100';
    const answer = (await (await app.request(`/v1/kits?${query}`)).json()) as KitsAnswer;
    expect(answer.input.bolts[0]).toMatchObject({ id: '1', print: '2', length: 360 });
    expect(answer.input.fibres.top).toEqual([{ fibre: '3', percent: 100 }]);
  });
  test.each([
    [{ bolts: [bolt] }, 'missing', '/plan'],
    [{ plan, bolts: [] }, 'too-short', '/bolts'],
    [{ plan, bolts: Array(61).fill(bolt) }, 'too-long', '/bolts'],
    [{ ...good, plan: { target: { width: 40 } } }, 'missing', '/plan/target/height'],
    [{ ...good, plan: { ...plan, spare: 101 } }, 'too-large', '/plan/spare'],
    [{ ...good, plan: { ...plan, colour: 1 } }, 'unknown-key', '/plan/colour'],
    [
      { ...good, plan: { ...plan, block: { cut: 4, seam: 2 } } },
      'seam-eats-face',
      '/plan/block/seam',
    ],
    [{ ...good, kits: 0 }, 'too-small', '/kits'],
    [{ ...good, kits: 10_001 }, 'too-large', '/kits'],
    [{ ...good, bolts: [bolt, bolt] }, 'repeated-id', '/bolts/1/id'],
    [{ ...good, bolts: [{ ...bolt, width: 8 }] }, 'roll-too-narrow', '/bolts/0/width'],
    [{ ...good, bolts: [{ ...bolt, length: 0 }] }, 'too-small', '/bolts/0/length'],
    [{ ...good, bolts: [{ ...bolt, cost: 9.5 }] }, 'not-whole', '/bolts/0/cost'],
    [{ ...good, bolts: [{ ...bolt, cost: -1 }] }, 'too-small', '/bolts/0/cost'],
    [{ ...good, bolts: [{ ...bolt, currency: 'usd' }] }, 'bad-name', '/bolts/0/currency'],
    [
      { ...good, bolts: [{ ...bolt, currency: 'EUR' }], currency: 'USD' },
      'mixed-currencies',
      '/bolts/0/currency',
    ],
    [{ ...good, bolts: [bolt, { ...backing, cost: undefined }] }, 'missing', '/bolts/1/cost'],
    [{ ...good, costs: { margin: 100 } }, 'too-large', '/costs/margin'],
    [{ ...good, costs: { margin: 250 } }, 'too-large', '/costs/margin'],
    [{ ...good, costs: { margin: 40, markup: 40 } }, 'price-unclear', '/costs'],
    [
      { ...good, fibres: { top: [{ fibre: 'cotton', percent: 90 }] } },
      'percents-do-not-sum',
      '/fibres/top',
    ],
    [{ ...good, perKit: { distinctPrints: 0 } }, 'too-small', '/perKit/distinctPrints'],
    [
      {
        ...good,
        plan: { ...plan, layers: [{ role: 'top', prints: [{ id: 'moss' }] }, { role: 'backing' }] },
      },
      'not-one-of',
      '/bolts/0/print',
    ],
  ])('answers %j with %s at %s', async (input, code, pointer) => {
    const answer = await send(input);
    expect(answer.status).toBe(422);
    const { errors } = (await answer.json()) as { errors: object[] };
    expect(errors).toContainEqual(expect.objectContaining({ code, pointer }));
  });
});
