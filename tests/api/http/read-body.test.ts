import { describe, expect, test } from 'vitest';
import { readBody } from '../../../api/http/read-body.ts';

const send = (body: BodyInit | null, headers: Record<string, string> = {}) =>
  readBody(
    new Request('https://x.test/', {
      method: 'POST',
      body,
      headers: { 'Content-Type': 'application/json', ...headers },
      duplex: 'half',
    } as RequestInit),
  );
const codesOf = (outcome: Awaited<ReturnType<typeof readBody>>) =>
  outcome.ok ? [] : outcome.faults.map(({ code }) => code);

describe('readBody', () => {
  test('reads JSON', async () => {
    expect(await send('{"a":[1,"½"]}')).toEqual({ ok: true, value: { a: [1, '½'] } });
  });
  test.each(['application/json; charset=utf-8', 'APPLICATION/JSON', 'application/vnd.x+json'])(
    'takes %s',
    async (type) => {
      expect((await send('{}', { 'Content-Type': type })).ok).toBe(true);
    },
  );
  test.each([
    '',
    'text/plain',
    'application/jsonp',
    'application/x-www-form-urlencoded',
    'text/json',
  ])('refuses the content type "%s"', async (type) => {
    expect(codesOf(await send('{}', { 'Content-Type': type }))).toEqual(['wrong-content-type']);
  });
  test('refuses a body that is compressed', async () => {
    expect(codesOf(await send('{}', { 'Content-Encoding': 'gzip' }))).toEqual([
      'wrong-content-type',
    ]);
  });
  test.each(['', '{', '{"a":NaN}', "{'a':1}", '{"a":1,}', '[1', 'undefined', '{"a":0x10}'])(
    'refuses %s as malformed',
    async (text) => {
      expect(codesOf(await send(text))).toEqual(['malformed-json']);
    },
  );
  test('refuses no body at all, and bytes that are not UTF-8', async () => {
    expect(codesOf(await send(null))).toEqual(['malformed-json']);
    expect(codesOf(await send(new Uint8Array([34, 255, 34])))).toEqual(['malformed-json']);
  });
  test('says malformed rather than repeated where both are so', async () => {
    expect(codesOf(await send('{"a":1,"a":2'))).toEqual(['malformed-json']);
    expect(codesOf(await send('{"a":1,"a":2}'))).toEqual(['repeated-key']);
  });
  test('takes 65,536 bytes and refuses one more', async () => {
    const body = (bytes: number) => JSON.stringify('x'.repeat(bytes - 2));
    expect((await send(body(65_536))).ok).toBe(true);
    expect(codesOf(await send(body(65_537)))).toEqual(['body-too-large']);
  });
  test('believes a length told beforehand and keeps not a byte', async () => {
    expect(codesOf(await send('{}', { 'Content-Length': '2000000' }))).toEqual(['body-too-large']);
  });
  test('stops reading an endless body whose length was told falsely', async () => {
    let pulled = 0;
    const endless = new ReadableStream({
      pull: (controller) => {
        pulled += 1;
        controller.enqueue(new Uint8Array(1024).fill(32));
      },
    });
    expect(codesOf(await send(endless, { 'Content-Length': '10' }))).toEqual(['body-too-large']);
    expect(pulled).toBeLessThan(4200);
  });
});
