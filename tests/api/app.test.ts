import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { app, ENDPOINTS, version } from '../../api/app.ts';
import { TEXT_KEYS } from '../../api/http/schemas/wire-schemas.ts';
import manifest from '../../package.json' with { type: 'json' };

test('GET /health says that all is well and which version it is', async () => {
  const answer = await app.request('/health');
  expect(answer.status).toBe(200);
  expect(answer.headers.get('cache-control')).toBe('no-store');
  expect(await answer.json()).toEqual({ ok: true, version });
});

test('version is that of package.json', () => {
  expect(version).toBe(manifest.version);
});

test.each(['/v1', '/v1/', '/v1/none', '/v1/plan/', '/V1/plan', '/none', '/%zz', '/problems/none'])(
  'GET %s is answered by a problem of 404',
  async (path) => {
    const answer = await app.request(path);
    expect(answer.status).toBe(404);
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(await answer.json()).toMatchObject({ type: '/problems/not-found', status: 404 });
  },
);

test.each(['/health', '/problems', ...ENDPOINTS.map(({ path }) => path)])(
  'DELETE %s is answered by a problem of 405 with Allow, and OPTIONS with the same Allow',
  async (path) => {
    const answer = await app.request(path, { method: 'DELETE' });
    const options = await app.request(path, { method: 'OPTIONS' });
    expect(answer.status).toBe(405);
    expect(answer.headers.get('allow')).toMatch(/^GET, HEAD, .*OPTIONS$/);
    expect(options.headers.get('allow')).toBe(answer.headers.get('allow'));
    expect(options.headers.get('access-control-allow-origin')).toBe('*');
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
  },
);

describe.each(ENDPOINTS)('$path', ({ path, summary, schema }) => {
  test('says in one sentence what it is for', () => {
    expect(summary).toMatch(/^[A-Z][^.]{20,}\.$/);
  });

  test('describes every part of its input', () => {
    const described = listParts(z.toJSONSchema(schema(), { io: 'input' }), []);
    expect(described.length).toBeGreaterThan(5);
    expect(
      described.filter((part) => part.description === undefined).map(({ key }) => key),
    ).toEqual([]);
  });

  test('has free text under TEXT_KEYS and nothing else there, so that a query can say it', () => {
    for (const { key, isFreeText, isText } of listParts(
      z.toJSONSchema(schema(), { io: 'input' }),
      [],
    )) {
      const last = key.split('.').at(-1) ?? '';
      if (isFreeText) expect(TEXT_KEYS).toContain(last);
      if (TEXT_KEYS.has(last)) expect([key, isText]).toEqual([key, true]);
    }
  });

  test('lists all that is wrong with an input of nothing that it knows', async () => {
    const answer = await app.request(`${path}?nonsense=1&unit=furlong`);
    const { errors } = (await answer.json()) as { errors: { parameter: string }[] };
    expect(errors.map(({ parameter }) => parameter)).toEqual(
      expect.arrayContaining(['nonsense', 'unit']),
    );
  });
});

test('every `type` of a problem can be looked up', async () => {
  const answer = await app.request('/v1/plan?a=1&a=2');
  const { type } = (await answer.json()) as { type: string };
  expect((await app.request(type)).status).toBe(200);
});

interface JsonSchema {
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly anyOf?: readonly JsonSchema[];
  readonly items?: JsonSchema;
}

interface Part {
  readonly key: string;
  readonly description: string | undefined;
  readonly isText: boolean;
  readonly isFreeText: boolean;
}

/** Every named part of a schema, at any depth. */
function listParts(schema: object, path: readonly string[]): readonly Part[] {
  const { properties = {}, anyOf = [], items } = schema as JsonSchema;
  const inner = [...anyOf, ...(items === undefined ? [] : [items])];
  return [
    ...Object.entries(properties).flatMap(([key, part]) => {
      const at = [...path, key];
      const isText = part.type === 'string';
      const isFreeText = isText && part.enum === undefined && part.const === undefined;
      const own = { key: at.join('.'), description: part.description, isText, isFreeText };
      return [own, ...listParts(part, at)];
    }),
    ...inner.flatMap((part) => listParts(part, path)),
  ];
}
