import { Hono } from 'hono';
import { expect, test } from 'vitest';
import type { ProblemBody } from '../../../api/http/problem.ts';
import { validate } from '../../../api/http/validate.ts';
import { resolveToy, toySchema } from '../../support/toy-endpoint.ts';

const app = new Hono();
const check = validate({ schema: () => toySchema, resolve: resolveToy });
app.on(['GET', 'POST', 'QUERY'], '/toy', check, (context) =>
  context.json(context.req.valid('query')),
);
const headers = { 'Content-Type': 'application/json' };

test('validate hands on an input that fits, however it came', async () => {
  const body = JSON.stringify({ id: 'a', list: [1, 2] });
  const answers = await Promise.all([
    app.request('/toy?id=a&list.0=1&list.1=2'),
    app.request('/toy', { method: 'POST', headers, body }),
    app.request('/toy', { method: 'QUERY', headers, body }),
  ]);
  for (const answer of answers) expect(await answer.text()).toBe(body);
});

test('validate hands a rule of the core on to the handler', async () => {
  expect((await app.request('/toy?id=a&count=7')).status).toBe(200);
});

test('validate answers a problem for what does not fit, and nothing of the library’s', async () => {
  const answer = await app.request('/toy?count=0');
  expect(answer.status).toBe(422);
  expect(answer.headers.get('content-type')).toBe('application/problem+json');
  const text = await answer.text();
  expect(text).not.toMatch(/zod|success|issues/i);
  expect(JSON.parse(text)).toMatchObject({
    errors: [
      { code: 'missing', pointer: '/id', parameter: 'id' },
      { code: 'too-small', pointer: '/count', parameter: 'count' },
    ],
  });
});

test('validate names no parameter for a body', async () => {
  const answer = await app.request('/toy', { method: 'POST', headers, body: '{}' });
  expect(await answer.json()).not.toHaveProperty('errors.0.parameter');
});

test('validate answers a problem for what cannot be read', async () => {
  const answer = await app.request('/toy', { method: 'POST', headers, body: '{' });
  expect(answer.status).toBe(400);
  expect(await answer.json()).toMatchObject({ type: '/problems/malformed-json' });
});

test('validate tells what cannot be read and all that is wrong beside it, as a message that cannot be read', async () => {
  const answer = await app.request('/toy?count=0&foo=1&id=&count=3&list.%FF=1');
  expect(answer.status).toBe(400);
  const { errors, type } = (await answer.json()) as ProblemBody;
  expect(type).toBe('/problems/several-faults');
  expect(errors.map((error) => Object.values(error).slice(0, 2).join(' '))).toEqual([
    'repeated-key /count',
    'malformed-query /list/%FF',
    'empty /id',
    'too-small /count',
    'unknown-key /foo',
  ]);
});

test('validate tells a key given twice in a body beside all else', async () => {
  const body = '{"id":"","id":"a","count":0}';
  const answer = await app.request('/toy', { method: 'POST', headers, body });
  expect(answer.status).toBe(400);
  expect(await answer.json()).toMatchObject({
    errors: [
      { code: 'repeated-key', pointer: '/id' },
      { code: 'too-small', pointer: '/count' },
    ],
  });
});
