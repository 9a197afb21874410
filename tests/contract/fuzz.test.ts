import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { app } from '../../api/app.ts';
import { layoutRequests } from '../support/layout-requests.ts';
import { flattenInput, planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import { kitsRequests, stashRequests } from '../support/stash-and-kits-requests.ts';

/** Values that people, programs and mischief put where something else belongs. */
const strange = fc.constantFrom<unknown>(
  null,
  true,
  '',
  ' ',
  '0x10',
  'NaN',
  '1e999',
  '-0',
  -0,
  -1,
  0,
  1e-320,
  1e308,
  Number.MAX_SAFE_INTEGER,
  '8 1/0',
  '1/2/3',
  '½½',
  '9'.repeat(32),
  '\ud800',
  '\u0000',
  '<svg onload=1>',
  '__proto__',
  [],
  {},
  [[]],
  { length: 1 },
  { __proto__: null, toString: 1 },
  0.1 + 0.2,
  '1,250',
  '12 cm 3 in',
  '5\' 4"',
);

/** One request with one or more places in it made strange. */
const mutated = (requests: fc.Arbitrary<object>) =>
  fc
    .tuple(
      requests,
      fc.array(fc.tuple(fc.nat(), strange, fc.nat(5)), { minLength: 1, maxLength: 3 }),
    )
    .map(([request, changes]) =>
      changes.reduce<unknown>((input, change) => mutate(input, change), request),
    );

function mutate(input: unknown, change: readonly [number, unknown, number]): unknown {
  const copy: unknown = structuredClone(input);
  const groups = listGroups(copy);
  const [where, value, how] = change;
  const group = groups[where % Math.max(1, groups.length)];
  if (group === undefined) return value;
  const keys = Object.keys(group);
  const key = how === 0 ? `k${where}` : (keys[where % Math.max(1, keys.length)] ?? 'k');
  if (how === 1) Reflect.deleteProperty(group, key);
  else Reflect.set(group, key, value);
  return copy;
}

function listGroups(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(listGroups)];
}

/** What every answer must be, whatever was asked. */
async function judge(answer: Response): Promise<void> {
  const text = await answer.text();
  expect(answer.headers.get('access-control-allow-origin')).toBe('*');
  if (answer.status === 200) {
    expect(answer.headers.get('etag')).toMatch(/^"[0-9a-f]{32}"$/);
    // A figure that is none becomes null in JSON, and NaN in a path.
    expect(text).not.toMatch(/:null[,}]|[[,]null[,\]]| d="[^"]*(NaN|undefined|Infinity)/);
    return;
  }
  expect([400, 404, 405, 413, 415, 422]).toContain(answer.status);
  expect(answer.headers.get('content-type')).toBe('application/problem+json');
  const { status, errors } = JSON.parse(text) as { status: number; errors: { detail: string }[] };
  expect(status).toBe(answer.status);
  expect(errors.length).toBeGreaterThan(0);
  for (const { detail } of errors) expect(detail).toMatch(/^\S.*\.$/su);
}

const rows: readonly [string, fc.Arbitrary<object>][] = [
  ['/v1/plan', planRequests],
  ['/v1/plan.svg', planRequests],
  ['/v1/yardage', yardageRequests],
  ['/v1/wash-shrinkage', washRequests],
  ['/v1/stash', stashRequests],
  ['/v1/kits', kitsRequests],
  ['/v1/layout', layoutRequests],
];

describe.each(rows)('%s', (path, requests) => {
  test('answers every mutated body with 200 or a problem, never 5xx', async () => {
    await fc.assert(
      fc.asyncProperty(
        mutated(requests),
        fc.constantFrom('POST', 'QUERY'),
        async (input, method) => {
          const headers = { 'Content-Type': 'application/json' };
          await judge(await app.request(path, { method, headers, body: JSON.stringify(input) }));
        },
      ),
      { numRuns: 400 },
    );
  });

  test('answers every mutated query likewise', async () => {
    await fc.assert(
      fc.asyncProperty(mutated(requests), async (input) => {
        const pairs = flattenInput(input);
        await judge(await app.request(`${path}?${pairs.join('&')}`));
      }),
      { numRuns: 400 },
    );
  });
});

test('any text at all as a query or a body is answered with 200 or a problem', async () => {
  const headers = { 'Content-Type': 'application/json' };
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 80 }), async (text) => {
      await judge(await app.request(`/v1/plan?${text.replaceAll('#', '')}`));
      await judge(await app.request('/v1/plan', { method: 'POST', headers, body: text }));
    }),
    { numRuns: 500 },
  );
});
