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
  test('takes one size of piece a fabric so far, and says so', async () => {
    const answer = await send({ fabrics: [{ ...fabric, pieces: [piece, { ...piece, id: 'b' }] }] });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      errors: [{ code: 'too-long', pointer: '/fabrics/0/pieces', expected: 1, received: 2 }],
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
