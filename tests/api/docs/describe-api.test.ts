import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { app, batch, ENDPOINTS, version } from '../../../api/app.ts';
import { describeApi } from '../../../api/docs/describe-api.ts';
import { makeChecker, type OpenapiDocument } from '../../support/ajv.ts';

const contract = readFileSync(new URL('../../../api/core/contract.ts', import.meta.url), 'utf8');
const document = (await describeApi({
  version,
  endpoints: ENDPOINTS,
  batch,
  contract,
  ask: (path, init) => app.request(path, init),
})) as unknown as OpenapiDocument;
const check = makeChecker(document, true);
const headers = { 'Content-Type': 'application/json' };

test('describeApi describes every endpoint, each operation under a name of its own', () => {
  expect(Object.keys(document.paths)).toEqual(
    expect.arrayContaining(ENDPOINTS.map(({ path }) => path)),
  );
  const ids = [...JSON.stringify(document).matchAll(/"operationId":"(\w+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('describeApi refuses an endpoint that nobody wrote words for', async () => {
  const [plan] = ENDPOINTS;
  if (plan === undefined) throw new Error('There is no endpoint.');
  const endpoints = [{ ...plan, path: '/v1/none' as const }];
  const ask = () => new Response();
  await expect(describeApi({ version, endpoints, batch, contract, ask })).rejects.toThrow(
    '/v1/none',
  );
});

const operations = [...ENDPOINTS, batch].map(({ path }) => ({
  path,
  post: document.paths[path]?.['post'],
}));

describe.each(operations)('$path as described', ({ path, post }) => {
  const sent = post?.requestBody?.content['application/json'];
  const [[mediaType, answered] = ['', undefined]] = Object.entries(
    post?.responses['200']?.content ?? {},
  );
  const examples = Object.entries(sent?.examples ?? {});

  test('has examples that are valid, and answered by the answers shown', async () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const [name, { value }] of examples) {
      const isValid = check(sent?.schema.$ref ?? '');
      expect(isValid(value), JSON.stringify(isValid.errors)).toBe(true);
      const answer = await app.request(path, {
        method: 'POST',
        headers,
        body: JSON.stringify(value),
      });
      expect(answer.headers.get('content-type')).toBe(mediaType);
      if (mediaType !== 'application/json') continue;
      expect(await answer.json()).toEqual(answered?.examples?.[name]?.value);
    }
  });

  test('has answers that are valid, with no part that is not described', () => {
    if (mediaType !== 'application/json') {
      expect(answered?.schema).toEqual({ type: 'string' });
      return;
    }
    const isValid = check(answered?.schema.$ref ?? '');
    for (const { value } of Object.values(answered?.examples ?? {})) {
      expect(isValid(value), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true);
      expect(isValid({ ...(value as object), nonsense: 1 })).toBe(false);
    }
  });

  test('has problems that are valid', async () => {
    const isValid = check('#/components/schemas/Problem');
    if (document.paths[path]?.['get'] === undefined) return;
    for (const query of ['nonsense=1', 'a=1&a=2', 'unit=furlong']) {
      const answer = await app.request(`${path}?${query}`);
      const problem = await answer.json();
      expect(isValid(problem), JSON.stringify(isValid.errors)).toBe(true);
      expect(document.paths[path]?.['get']?.responses).toHaveProperty(String(answer.status));
    }
  });
});
