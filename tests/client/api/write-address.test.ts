import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { writeAddress } from '../../../client/api/write-address.ts';
import { planRequests, washRequests, yardageRequests } from '../../support/requests.ts';
import { kitsRequests, layoutRequests, stashRequests } from '../../support/workroom-requests.ts';

const send = (path: string, input: object) =>
  app.request(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

const rows: readonly [string, fc.Arbitrary<object>][] = [
  ['/v1/plan', planRequests],
  ['/v1/yardage', yardageRequests],
  ['/v1/wash-shrinkage', washRequests],
  ['/v1/stash', stashRequests],
  ['/v1/kits', kitsRequests],
  ['/v1/layout', layoutRequests],
];

describe('writeAddress', () => {
  test('leaves out what is undefined and writes signs so that they stay themselves', () => {
    const input = { a: undefined, b: ['x&y=z', 0.5], c: true };
    expect(writeAddress('/p', input)).toBe('/p?b.0=x%26y%3Dz&b.1=0.5&c=true');
  });

  test.each(rows)('%s: what it asks is what the body asks', async (path, requests) => {
    await fc.assert(
      fc.asyncProperty(requests, async (input) => {
        const address = writeAddress(path, input);
        fc.pre(address.length < 8000);
        const [byPost, byGet] = await Promise.all([send(path, input), app.request(address)]);
        expect(byGet.status).toBe(byPost.status);
        expect(byGet.headers.get('etag')).toBe(byPost.headers.get('etag'));
      }),
      { numRuns: 60 },
    );
  });

  test.each(rows)(
    '%s: of a canonical input it is the canonical address',
    async (path, requests) => {
      await fc.assert(
        fc.asyncProperty(requests, async (input) => {
          const self = (await send(path, input)).headers.get('content-location');
          fc.pre(self !== null);
          // What the address says, as an input with its keys in any order.
          const told = unfold(new URL(self, 'http://x').searchParams);
          expect(writeAddress(path, told)).toBe(self);
        }),
        { numRuns: 60 },
      );
    },
  );
});

/** A query as an input, each group with its keys in the order of the alphabet. */
function unfold(query: URLSearchParams): object {
  const root: Record<string, unknown> = {};
  for (const [name, text] of [...query].sort()) {
    const path = name.split('.');
    const last = path.pop() ?? '';
    const isNumber =
      /^-?\d+(\.\d+)?$/.test(text) &&
      !['id', 'fabric', 'color', 'print', 'currency'].includes(last);
    const group = path.reduce((part, key) => {
      part[key] ??= {};
      return part[key] as Record<string, unknown>;
    }, root);
    group[last] = isNumber ? Number(text) : text;
  }
  return settle(root) as object;
}

function settle(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, part]) => [key, settle(part)] as const);
  return entries.every(([key]) => /^\d+$/.test(key))
    ? entries.sort(([one], [other]) => Number(one) - Number(other)).map(([, part]) => part)
    : Object.fromEntries(entries);
}
