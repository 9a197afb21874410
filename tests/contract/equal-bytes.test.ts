import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { app } from '../../api/app.ts';
import { layoutRequests } from '../support/layout-requests.ts';
import {
  flattenInput,
  planRequests,
  spellLength,
  washRequests,
  yardageRequests,
} from '../support/requests.ts';
import { kitsRequests, stashRequests } from '../support/stash-and-kits-requests.ts';

const send = (path: string, method: string, input: unknown) =>
  app.request(path, {
    method,
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

/** What must be the same of two ways to ask. */
const essence = async (answer: Response) => ({
  status: answer.status,
  etag: answer.headers.get('etag'),
  text: await answer.text(),
});

const rows: readonly [string, fc.Arbitrary<object>][] = [
  ['/v1/plan', planRequests],
  ['/v1/plan.svg', planRequests],
  ['/v1/yardage', yardageRequests],
  ['/v1/wash-shrinkage', washRequests],
  ['/v1/stash', stashRequests],
  ['/v1/kits', kitsRequests],
  ['/v1/layout', layoutRequests],
];

/** So many of each kind of request that all together are 2,000 in three ways of respelling. */
const RESPELT = Math.ceil(2000 / (3 * rows.length));

describe.each(rows)('%s', (path, requests) => {
  test('gives GET, POST and QUERY of one input the same bytes and ETag', async () => {
    await fc.assert(
      fc.asyncProperty(requests, async (input) => {
        const query = flattenInput(input).join('&');
        fc.pre(query.length < 8000);
        const get = await essence(await app.request(`${path}?${query}`));
        const post = await essence(await send(path, 'POST', input));
        const asked = await essence(await send(path, 'QUERY', input));
        expect(asked).toEqual(post);
        // A problem of a query names its parameters besides.
        if (post.status === 200) expect(get).toEqual(post);
        else expect(get.status).toBe(post.status);
      }),
      { numRuns: 60 },
    );
  });

  test('answers at the canonical address what it answered to another spelling', async () => {
    await fc.assert(
      fc.asyncProperty(requests, fc.infiniteStream(fc.nat()), async (input, ranks) => {
        const answer = await send(path, 'POST', input);
        fc.pre(answer.status === 200);
        const self = answer.headers.get('content-location') ?? '';
        const canonical = await app.request(self);
        expect(canonical.headers.has('content-location')).toBe(false);
        expect(await essence(canonical)).toEqual(await essence(answer));
        const pairs = flattenInput(input).map((pair) => ({ pair, rank: ranks.next().value ?? 0 }));
        const shuffled = pairs.sort((a, b) => a.rank - b.rank).map(({ pair }) => pair);
        const permuted = await app.request(`${path}?${shuffled.join('&')}`);
        expect(permuted.headers.get('etag')).toBe(answer.headers.get('etag'));
      }),
      { numRuns: RESPELT },
    );
  });

  test('answers alike however each length is written', async () => {
    await fc.assert(
      fc.asyncProperty(requests, fc.nat(), async (input, way) => {
        const answer = await send(path, 'POST', input);
        fc.pre(answer.status === 200);
        const respelt = await send(path, 'POST', respell(input, way));
        expect(await essence(respelt)).toEqual(await essence(answer));
      }),
      { numRuns: RESPELT },
    );
  });

  test('answers alike where every default is said', async () => {
    await fc.assert(
      fc.asyncProperty(requests, async (input) => {
        const answer = await send('/v1/plan.svg' === path ? '/v1/plan' : path, 'POST', input);
        fc.pre(answer.status === 200);
        const { input: understood } = (await answer.json()) as { input: object };
        const [one, other] = await Promise.all([
          send(path, 'POST', input),
          send(path, 'POST', understood),
        ]);
        expect(await essence(other)).toEqual(await essence(one));
      }),
      { numRuns: RESPELT },
    );
  });
});

const LENGTHS = new Set([
  'width',
  'height',
  'cut',
  'seam',
  'snipPitch',
  'selvage',
  'before',
  'after',
  'lengthLeft',
]);

/** The same input with each length in another way of writing; shrink rates are no lengths. */
function respell(value: unknown, way: number, key = ''): unknown {
  if (typeof value === 'number' && LENGTHS.has(key)) return spellLength(value, way);
  if (Array.isArray(value)) return value.map((part) => respell(part, way + 1));
  if (typeof value !== 'object' || value === null || key === 'shrink') return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, part], at) => [name, respell(part, way + at, name)]),
  );
}
