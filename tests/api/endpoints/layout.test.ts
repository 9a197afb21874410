import { describe, expect, test } from 'vitest';
import type { LayoutAnswer } from '#core/contract.ts';
import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { app } from '../../../api/app.ts';
import { useWorker } from '../../support/worker.ts';

const six = Array.from({ length: 6 }, (_, at) => ({ id: `Print ${at + 1}` }));
const wish = { columns: 8, rows: 6, prints: six };
const send = (input: unknown, method = 'POST') =>
  app.request('/v1/layout', {
    method,
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

describe('/v1/layout', () => {
  test('answers the very bytes that the core makes of the request, by POST, QUERY and GET', async () => {
    const resolved = resolveLayout(wish);
    if (!resolved.ok) throw new Error('refused');
    const body = JSON.stringify(planLayout(resolved.value));
    expect(await (await send(wish)).text()).toBe(body);
    expect(await (await send(wish, 'QUERY')).text()).toBe(body);
    const answer = await app.request(`/v1/layout?${resolved.value.query}`);
    expect(answer.headers.has('content-location')).toBe(false);
    expect(await answer.text()).toBe(body);
  });

  test('answers 304 to the tag of the same layout', async () => {
    const first = await send(wish);
    const { links } = (await first.clone().json()) as LayoutAnswer;
    const tag = first.headers.get('etag') ?? '';
    const again = await app.request(links.self, { headers: { 'If-None-Match': tag } });
    expect(again.status).toBe(304);
  });

  test('takes a grid by query, letters and full stops, at its full size', async () => {
    const row = 'AB'.repeat(20);
    const fixed = Array.from(
      { length: 40 },
      (_, at) => `fixed.${at}=${at % 2 === 0 ? row : [...row].reverse().join('')}`,
    );
    const answer = await app.request(
      `/v1/layout?columns=40&rows=40&prints.0.id=1&prints.1.id=true&${fixed.join('&')}`,
    );
    expect(answer.status).toBe(200);
    const { touching, optimal, input } = (await answer.json()) as LayoutAnswer;
    expect([touching.sides, optimal]).toEqual([0, true]);
    expect(input.prints.map(({ id }) => id)).toEqual(['1', 'true']);
  });

  test.each([
    [{ ...wish, columns: 41 }, 'too-large', '/columns'],
    [
      { ...wish, prints: six.map((print) => ({ ...print, count: 9 })) },
      'counts-do-not-sum',
      '/prints',
    ],
    [
      { ...wish, fixed: ['A.......', '..G.....', '', '', '', ''].map((row) => row.padEnd(8, '.')) },
      'not-one-of',
      '/fixed/1',
    ],
    [
      { ...wish, fixed: ['........', '.......', '........', '........', '........', '........'] },
      'too-short',
      '/fixed/1',
    ],
    [
      {
        columns: 3,
        rows: 1,
        prints: [
          { id: 'a', count: 1 },
          { id: 'b', count: 2 },
        ],
        fixed: ['AA.'],
      },
      'too-small',
      '/prints/0/count',
    ],
    [{ ...wish, prints: [{ id: 'a' }] }, 'too-short', '/prints'],
    [{ columns: 3, prints: six }, 'missing', '/rows'],
    [{ ...wish, pattern: 'spiral' }, 'not-one-of', '/pattern'],
  ])('answers %j with %s at %s, alone', async (input, code, pointer) => {
    const answer = await send(input);
    expect(answer.status).toBe(422);
    const { errors } = (await answer.json()) as { readonly errors: readonly object[] };
    expect(errors).toMatchObject([{ code, pointer }]);
  });
});

describe('/v1/layout on the worker runtime', () => {
  const worker = useWorker();

  test('answers the bytes that Node answers, with the same tag', async () => {
    const { links } = (await (await send(wish)).json()) as LayoutAnswer;
    const [here, there] = [await app.request(links.self), await worker.fetch(links.self)];
    expect(there.status).toBe(200);
    expect(await there.text()).toBe(await here.text());
    expect(there.headers.get('etag')).toBe(here.headers.get('etag'));
  });

  test('draws a layout, and tells a fault', async () => {
    const query = 'columns=3&rows=3&prints.0.id=a&prints.1.id=b';
    const picture = await worker.fetch(`/v1/layout.svg?${query}`);
    expect(picture.headers.get('content-type')).toBe('image/svg+xml');
    expect(await picture.text()).toMatch(/^<svg /);
    expect((await worker.fetch(`/v1/layout?${query}&fixed.0=AAAA`)).status).toBe(422);
  });
});
