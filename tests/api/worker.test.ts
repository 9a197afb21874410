import { describe, expect, test } from 'vitest';
import { app } from '../../api/app.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
const headers = { 'Content-Type': 'application/json' };
const target = { width: 40, height: 50 };
const json = JSON.stringify;
const wish = 'target.width=40&target.height=50';

test('GET /health answers on the worker runtime', async () => {
  const answer = await worker.fetch('/health');
  expect(await answer.json()).toMatchObject({ ok: true });
});

type Sent = readonly [
  name: string,
  status: number,
  code: string,
  path: string,
  init?: {
    readonly method?: string;
    readonly body?: string;
    readonly headers?: Record<string, string>;
  },
];

const post = (body: string, own: Record<string, string> = headers) => ({
  method: 'POST',
  body,
  headers: own,
});
const plan = (input: object) => post(json({ target, ...input }));

const bad: readonly Sent[] = [
  [
    'a seam that eats the face',
    422,
    'seam-eats-face',
    '/v1/plan',
    plan({ block: { cut: 4, seam: 2 } }),
  ],
  [
    'snips at the stitching',
    422,
    'snips-reach-stitching',
    `/v1/plan?${wish}&block.seam=0.5&block.snipDepth=0.5`,
  ],
  [
    'snips past the stitching',
    422,
    'snips-reach-stitching',
    '/v1/plan',
    plan({ block: { snipDepth: '1 1/4' } }),
  ],
  [
    'a roll narrower than a block',
    422,
    'roll-too-narrow',
    '/v1/plan',
    plan({
      block: { cut: 12 },
      layers: [{ role: 'top', width: '11 in' }, { role: 'backing' }],
    }),
  ],
  [
    'a roll narrower than a piece',
    422,
    'roll-too-narrow',
    '/v1/yardage',
    post(
      json({
        fabrics: [{ id: 'a', width: 10, pieces: [{ id: 'p', width: 12, length: 12, count: 1 }] }],
      }),
    ),
  ],
  [
    'NaN in a query, for a length',
    422,
    'not-a-length',
    '/v1/plan?target.width=NaN&target.height=50',
  ],
  ['NaN in a query, for a number', 422, 'wrong-type', `/v1/plan?${wish}&spare=NaN`],
  [
    'NaN in a body',
    400,
    'malformed-json',
    '/v1/plan',
    post('{"target":{"width":NaN,"height":50}}'),
  ],
  [
    '1e999 in a query, for a length',
    422,
    'not-a-length',
    '/v1/plan?target.width=1e999&target.height=50',
  ],
  ['1e999 in a query, for a number', 422, 'wrong-type', `/v1/plan?${wish}&spare=1e999`],
  [
    '1e999 in a body, for a length',
    422,
    'wrong-type',
    '/v1/plan',
    post('{"target":{"width":1e999,"height":50}}'),
  ],
  [
    '1e999 in a body, for a number',
    422,
    'wrong-type',
    '/v1/plan',
    post(`{"target":${json(target)},"spare":1e999}`),
  ],
  [
    '0x10 in a query, for a length',
    422,
    'not-a-length',
    '/v1/plan?target.width=0x10&target.height=50',
  ],
  ['0x10 in a query, for a number', 422, 'wrong-type', `/v1/plan?${wish}&spare=0x10`],
  [
    '0x10 in a body',
    400,
    'malformed-json',
    '/v1/plan',
    post(`{"target":${json(target)},"spare":0x10}`),
  ],
  ['an empty length in a query', 422, 'empty', '/v1/plan?target.width=&target.height=50'],
  [
    'an empty length in a body',
    422,
    'empty',
    '/v1/plan',
    post(json({ target: { width: '', height: 50 } })),
  ],
  ['an empty body', 400, 'malformed-json', '/v1/plan', post('')],
  ['a key repeated in a query', 400, 'repeated-key', `/v1/plan?${wish}&spare=1&spare=2`],
  [
    'a key repeated in a body',
    400,
    'repeated-key',
    '/v1/plan',
    post(`{"target":${json(target)},"spare":1,"spare":2}`),
  ],
  ['__proto__ in a query', 400, 'malformed-query', `/v1/plan?${wish}&__proto__.x=1`],
  [
    '__proto__ in a body',
    422,
    'unknown-key',
    '/v1/plan',
    post(`{"target":${json(target)},"__proto__":{"x":1}}`),
  ],
  [
    'a body of 2 MB',
    413,
    'body-too-large',
    '/v1/plan',
    post(json({ target, pad: 'x'.repeat(2_000_000) })),
  ],
  [
    '10,000 nested brackets',
    400,
    'too-deep',
    '/v1/plan',
    post(`${'['.repeat(10_000)}${']'.repeat(10_000)}`),
  ],
  [
    '10,000 nested groups',
    400,
    'too-deep',
    '/v1/plan',
    post(`${'{"a":'.repeat(10_000)}1${'}'.repeat(10_000)}`),
  ],
  [
    'a form',
    415,
    'wrong-content-type',
    '/v1/plan',
    post(wish, { 'Content-Type': 'application/x-www-form-urlencoded' }),
  ],
  [
    'JSON as plain text',
    415,
    'wrong-content-type',
    '/v1/plan',
    post(json({ target }), { 'Content-Type': 'text/plain' }),
  ],
  ['an unknown path', 404, 'not-found', '/v1/nothing'],
  ['no endpoint', 404, 'not-found', '/v1'],
  ['a wrong method', 405, 'wrong-method', '/v1/plan', { method: 'DELETE' }],
  [
    'a wrong method with a body',
    405,
    'wrong-method',
    '/v1/yardage',
    { ...post('{}'), method: 'PUT' },
  ],
];

describe('the worker runtime answers by a problem that any page may read:', () => {
  test.each(bad.map(([name, status, code, path, init]) => ({ name, status, code, path, init })))(
    '$name with $status $code',
    async ({ status, code, path, init }) => {
      const answer = await worker.fetch(path, init);
      expect(answer.status).toBe(status);
      expect(answer.headers.get('content-type')).toBe('application/problem+json');
      expect(answer.headers.get('access-control-allow-origin')).toBe('*');
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
      expect(await answer.json()).toMatchObject({
        type: `/problems/${code}`,
        status,
        errors: [{ code }],
      });
    },
  );

  test('a body of 2 MB that tells no length', async () => {
    const chunk = new TextEncoder().encode(' '.repeat(8192));
    let sent = 0;
    const body = new ReadableStream({
      pull: (controller) => {
        sent += chunk.length;
        if (sent > 2_000_000) controller.close();
        else controller.enqueue(chunk);
      },
    });
    const answer = await worker.fetch('/v1/plan', {
      method: 'POST',
      headers,
      body,
      duplex: 'half',
    });
    expect(answer.status).toBe(413);
    expect(await answer.json()).toMatchObject({ type: '/problems/body-too-large' });
  });
});

describe('the worker runtime', () => {
  test('gives GET, POST and QUERY the bytes and the ETag that Node gives', async () => {
    for (const [path, input, query] of [
      ['/v1/plan', { target, explain: true }, `${wish}&explain=true`],
      ['/v1/plan.svg', { target }, wish],
      ['/v1/wash-shrinkage', { sewn: target }, 'sewn.width=40&sewn.height=50'],
    ] as const) {
      const here = await app.request(`${path}?${query}`);
      const text = await here.text();
      for (const answer of [
        await worker.fetch(`${path}?${query}`),
        await worker.fetch(path, post(json(input))),
        await worker.fetch(path, { ...post(json(input)), method: 'QUERY' }),
      ]) {
        expect(answer.status).toBe(200);
        expect(answer.headers.get('etag')).toBe(here.headers.get('etag'));
        expect(await answer.text()).toBe(text);
      }
    }
  });
  test('answers HEAD without a body and 304 with the headers of RFC 9110 §15.4.5', async () => {
    const head = await worker.fetch(`/v1/plan?${wish}`, { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
    const etag = head.headers.get('etag') ?? '';
    const again = await worker.fetch(`/v1/plan?${wish}&unit=in`, {
      headers: { 'If-None-Match': `"x", W/${etag}` },
    });
    expect(again.status).toBe(304);
    expect(again.headers.get('etag')).toBe(etag);
    expect(again.headers.get('access-control-allow-origin')).toBe('*');
    expect(again.headers.get('content-location')).toBe(`/v1/plan?${wish}`);
    expect(again.headers.get('cache-control')).toContain('max-age=86400');
  });
  test('answers OPTIONS with 204', async () => {
    const answer = await worker.fetch('/v1/plan', { method: 'OPTIONS' });
    expect(answer.status).toBe(204);
    expect(answer.headers.get('access-control-allow-methods')).toContain('QUERY');
  });
  test('serves the page that the type of a problem points to', async () => {
    const answer = await worker.fetch('/problems/seam-eats-face');
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
  });
});
