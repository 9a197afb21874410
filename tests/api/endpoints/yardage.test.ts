import { describe, expect, test } from 'vitest';
import type { YardageAnswer } from '#core/contract.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { app } from '../../../api/app.ts';

const piece = { id: 'squares', width: 8.5, length: 8.5, count: 40 };
const fabric = { id: 'flannel', width: 44, pieces: [piece] };
const send = (input: unknown) =>
  app.request('/v1/yardage', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/yardage', () => {
  test('answers the very bytes that the core makes of the request', async () => {
    const resolved = resolveYardage({ fabrics: [fabric] });
    if (!resolved.ok) throw new Error('refused');
    expect(await (await send({ fabrics: [fabric] })).text()).toBe(
      JSON.stringify(planYardage(resolved.value)),
    );
  });
  test('cuts 40 squares of 8.5 in from 43 usable inches in 8 strips: 68 in and 1 in of squaring-up', async () => {
    // By hand: floor(43 / 8.5) = 5 a strip, ceil(40 / 5) = 8 strips.
    const { fabrics } = (await (await send({ fabrics: [fabric] })).json()) as YardageAnswer;
    expect(fabrics[0]).toMatchObject({ usableWidth: 43, length: 69 });
  });
  test('takes up to 24 sizes of piece a fabric, and refuses the 25th', async () => {
    const kinds = (count: number) =>
      Array.from({ length: count }, (_, at) => ({
        ...piece,
        id: `${at}`,
        width: 3 + at,
        count: 1,
      }));
    expect((await send({ fabrics: [{ ...fabric, pieces: kinds(24) }] })).status).toBe(200);
    const answer = await send({ fabrics: [{ ...fabric, pieces: kinds(25) }] });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      errors: [{ code: 'too-long', pointer: '/fabrics/0/pieces', expected: 24, received: 25 }],
    });
  });
  test('refuses 10,000 pieces, of one size or of several', async () => {
    const one = await send({ fabrics: [{ ...fabric, pieces: [{ ...piece, count: 10_000 }] }] });
    expect(await one.json()).toMatchObject({
      errors: [{ code: 'too-large', pointer: '/fabrics/0/pieces/0/count', expected: 5000 }],
    });
    const pieces = ['a', 'b', 'c'].map((id) => ({ ...piece, id, count: 3000 }));
    const several = await send({ fabrics: [{ ...fabric, pieces }] });
    expect(several.status).toBe(422);
    expect(await several.json()).toMatchObject({
      errors: [{ code: 'too-large', pointer: '/fabrics/0/pieces', received: 9000 }],
    });
  });
  test('buys the cheaper of a bolt and fat quarters, in the body and in the query alike', async () => {
    const offers = [
      { kind: 'roll', id: 'bolt', price: 1200 },
      { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1, price: 250 },
    ];
    // 8 squares of 8 1/2 in: four on each of two fat quarters, or two strips: 18 in, half a yard.
    const asked = { fabrics: [{ ...fabric, offers, pieces: [{ ...piece, count: 8 }] }] };
    const answer = (await (await send(asked)).json()) as YardageAnswer;
    expect(answer.fabrics[0]).toMatchObject({
      buy: [{ offer: 'quarter', count: 2, unit: 'pack', price: 500 }],
      cost: { of: 'price', total: 500, bound: 500 },
      optimal: true,
    });
    const got = await app.request(answer.links.self);
    expect(await got.text()).toBe(JSON.stringify(answer));
  });
  test('wants a price of every offer or of none, and knows both kinds of offer', async () => {
    const bolt = { kind: 'roll', id: 'bolt', price: 1200 };
    const square = { kind: 'pieces', id: 'square', width: 10, length: 10, count: 42 };
    const mixed = await send({ fabrics: [{ ...fabric, offers: [bolt, square] }] });
    expect(mixed.status).toBe(422);
    expect(await mixed.json()).toMatchObject({
      errors: [{ code: 'missing', pointer: '/fabrics/0/offers/1/price' }],
    });
    const odd = await send({ fabrics: [{ ...fabric, offers: [{ ...square, kind: 'jar' }] }] });
    expect(odd.status).toBe(422);
    expect(JSON.stringify(await odd.json())).toContain('/fabrics/0/offers/0/kind');
    const half = await send({ fabrics: [{ ...fabric, offers: [{ ...bolt, price: 12.5 }] }] });
    expect(await half.json()).toMatchObject({
      errors: [{ code: 'not-whole', pointer: '/fabrics/0/offers/0/price' }],
    });
  });
  test.each([
    [{}, 'missing', '/fabrics'],
    [{ fabrics: [] }, 'too-short', '/fabrics'],
    [{ fabrics: [{ ...fabric, pieces: [] }] }, 'too-short', '/fabrics/0/pieces'],
    [{ fabrics: [fabric, fabric] }, 'repeated-id', '/fabrics/1/id'],
    [{ fabrics: [{ ...fabric, width: 7 }] }, 'roll-too-narrow', '/fabrics/0/pieces/0/width'],
    [
      { fabrics: [{ ...fabric, pieces: [{ ...piece, count: 0 }] }] },
      'too-small',
      '/fabrics/0/pieces/0/count',
    ],
    [{ fabrics: [{ ...fabric, id: 'a\u0000' }] }, 'bad-name', '/fabrics/0/id'],
  ])('answers %j with %s at %s', async (input, code, pointer) => {
    const answer = await send(input);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ errors: [{ code, pointer }] });
  });
});
