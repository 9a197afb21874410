import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { makeEtag, matchesEtag } from '../../../api/http/etag.ts';

describe('makeEtag', () => {
  test('is the first 128 bits of SHA-256 in quotes, as another library reckons it', async () => {
    const digest = createHash('sha256').update('1.0.0 /v1/plan?a=1').digest('hex');
    expect(await makeEtag('1.0.0 /v1/plan?a=1')).toBe(`"${digest.slice(0, 32)}"`);
  });
  test('differs where engine or input differ', async () => {
    const tags = await Promise.all(['1 /a', '2 /a', '1 /b'].map(makeEtag));
    expect(new Set(tags).size).toBe(3);
  });
});

// RFC 9110 §13.1.2 and the comparison table of §8.8.3.2.
describe('matchesEtag', () => {
  const rows: readonly [string | null, boolean][] = [
    ['"a"', true],
    ['W/"a"', true],
    ['*', true],
    [' * ', true],
    ['"x", "a"', true],
    ['W/"x",W/"a"', true],
    ['"x,y", "a"', true],
    ['"b"', false],
    ['a', false],
    ['"A"', false],
    ['', false],
    [null, false],
  ];
  test.each(rows)('%s is %s for "a"', (header, expected) => {
    expect(matchesEtag(header, '"a"')).toBe(expected);
  });
});
