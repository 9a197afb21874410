import { describe, expect, test } from 'vitest';
import { answer, type NamedAnswer } from '../../../api/http/answer.ts';

const origin = 'https://x.test';
const path = '/v1/toy';
const query = 'id=a';
const self = `${path}?${query}`;
const named: NamedAnswer = {
  path,
  query,
  engine: '1.0.0',
  mediaType: 'application/json',
  write: () => '{}',
};
const ask = (method: string, path: string, headers: Record<string, string> = {}, over = {}) =>
  answer(new Request(origin + path, { method, headers }), { ...named, ...over });

describe('answer', () => {
  test('to the canonical address has no Content-Location; HEAD is as GET', async () => {
    for (const method of ['GET', 'HEAD']) {
      const response = await ask(method, self);
      expect(response.status).toBe(200);
      expect(response.headers.has('content-location')).toBe(false);
      expect(response.headers.get('cache-control')).toBe(
        'public, max-age=86400, stale-while-revalidate=604800',
      );
    }
  });
  test('to another spelling, to POST and to QUERY names the canonical address', async () => {
    for (const [method, path] of [
      ['GET', '/v1/toy?id=%61'],
      ['POST', '/v1/toy'],
      ['QUERY', self],
    ] as const) {
      expect((await ask(method, path)).headers.get('content-location')).toBe(self);
    }
  });
  test('to POST is not to be kept', async () => {
    expect((await ask('POST', '/v1/toy')).headers.get('cache-control')).toBe('no-store');
  });
  test('leaves out an address that is too long to be asked', async () => {
    const long = `id=${'a'.repeat(9000)}`;
    const response = await ask('POST', '/v1/toy', {}, { query: long });
    expect(response.headers.has('content-location')).toBe(false);
  });
  test('has one ETag for every way to ask, and another for another engine', async () => {
    const tag = async (...asked: Parameters<typeof ask>) =>
      (await ask(...asked)).headers.get('etag');
    const tags = await Promise.all([
      tag('GET', self),
      tag('POST', '/v1/toy'),
      tag('QUERY', '/v1/toy'),
      tag('GET', '/v1/toy?x'),
    ]);
    expect(new Set(tags).size).toBe(1);
    expect(await tag('GET', self, {}, { engine: '1.0.1' })).not.toBe(tags[0]);
  });
  test.each(['GET', 'HEAD', 'QUERY'])('of 304 to %s is not written', async (method) => {
    const etag = (await ask('GET', self)).headers.get('etag') ?? '';
    const write = () => {
      throw new Error('written');
    };
    const response = await ask(method, '/v1/toy?x', { 'If-None-Match': `W/${etag}` }, { write });
    expect(response.status).toBe(304);
    expect(await response.text()).toBe('');
    // RFC 9110 §15.4.5: what a 200 would have said of these.
    for (const name of [
      'etag',
      'cache-control',
      'content-location',
      'access-control-allow-origin',
    ]) {
      expect(response.headers.get(name)).toBeTruthy();
    }
  });
  test('to HEAD is not written', async () => {
    const write = () => {
      throw new Error('written');
    };
    const response = await ask('HEAD', self, {}, { write });
    expect([response.status, response.body]).toEqual([200, null]);
    expect(response.headers.get('content-type')).toBe('application/json');
  });
  test('to POST is written whatever the caller holds', async () => {
    expect((await ask('POST', '/v1/toy', { 'If-None-Match': '*' })).status).toBe(200);
  });
});
