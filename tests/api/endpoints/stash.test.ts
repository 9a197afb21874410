import { describe, expect, test } from 'vitest';
import type { StashAnswer, StashRequest } from '#core/contract.ts';
import { planStash } from '#core/stash.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { app } from '../../../api/app.ts';

const piece = { id: 'quarter', role: 'top', width: 21, length: 18, count: 9 } as const;
const send = (input: unknown) =>
  app.request('/v1/stash', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/stash', () => {
  test('answers the very bytes that the core makes of the request', async () => {
    const request: StashRequest = { pieces: [piece], shape: { target: { width: 40, height: 50 } } };
    const resolved = resolveStash(request);
    if (!resolved.ok) throw new Error('refused');
    const answer = await send(request);
    expect(answer.headers.get('content-type')).toBe('application/json');
    expect(await answer.text()).toBe(JSON.stringify(planStash(resolved.value)));
  });
  test('nine fat quarters at 9 in are 36 squares, by hand four each', async () => {
    const answer = await send({ pieces: [piece], block: { cut: 9 } });
    const { options, links } = (await answer.json()) as StashAnswer;
    expect(options[0]).toMatchObject({ columns: 6, rows: 6, blocks: 36 });
    expect(links.page).toMatch(/^\/stash\?pieces\.0\.id=quarter&/);
  });
  test('takes a query, where a piece may be called 12', async () => {
    const query =
      'pieces.0.id=12&pieces.0.print=7&pieces.0.role=top&pieces.0.width=21&pieces.0.length=18';
    const answer = await app.request(`/v1/stash?${query}`);
    const { input } = (await answer.json()) as StashAnswer;
    expect(input.pieces[0]).toMatchObject({ id: '12', print: '7', width: 21 });
  });
  test.each([
    [{}, 'missing', '/pieces'],
    [{ pieces: [] }, 'too-short', '/pieces'],
    [{ pieces: Array(61).fill(piece) }, 'too-long', '/pieces'],
    [{ pieces: [piece, piece] }, 'repeated-id', '/pieces/1/id'],
    [{ pieces: [{ ...piece, role: 'middle' }] }, 'layers-unfit', '/pieces'],
    [{ pieces: [{ ...piece, role: 'side' }] }, 'not-one-of', '/pieces/0/role'],
    [{ pieces: [{ ...piece, width: 0 }] }, 'too-small', '/pieces/0/width'],
    [{ pieces: [{ ...piece, length: -3 }] }, 'negative-length', '/pieces/0/length'],
    [{ pieces: [{ ...piece, count: 1.5 }] }, 'not-whole', '/pieces/0/count'],
    [{ pieces: [{ ...piece, count: 1001 }] }, 'too-large', '/pieces/0/count'],
    [{ pieces: [{ ...piece, print: 'a\u0000' }] }, 'bad-name', '/pieces/0/print'],
    [{ pieces: [piece], shape: { ratio: 9 } }, 'too-large', '/shape/ratio'],
    [{ pieces: [piece], shape: { target: { width: 40 } } }, 'missing', '/shape/target/height'],
    [{ pieces: [piece], touch: 'all' }, 'not-one-of', '/touch'],
    [{ pieces: [piece], block: { snipDepth: 1 } }, 'unknown-key', '/block/snipDepth'],
    [
      { pieces: [piece], layers: [{ role: 'top', width: 3 }, {}] },
      'unknown-key',
      '/layers/0/width',
    ],
    [{ pieces: [piece], cuts: [4], block: { seam: 2 } }, 'seam-eats-face', '/cuts/0'],
  ])('answers %j with %s at %s', async (input, code, pointer) => {
    const answer = await send(input);
    expect(answer.status).toBe(422);
    const { errors } = (await answer.json()) as { errors: object[] };
    expect(errors).toContainEqual(expect.objectContaining({ code, pointer }));
  });
});
