import { expect, test } from 'vitest';
import { readInput, readsQuery } from '../../../api/http/read-input.ts';

const address = 'https://x.test/toy?id=12&n=1';
const headers = { 'Content-Type': 'application/json' };

test('readInput takes the query of GET and HEAD, text where a name is of text', async () => {
  for (const method of ['GET', 'HEAD']) {
    expect(await readInput(new Request(address, { method }))).toEqual({
      ok: true,
      value: { id: '12', n: 1 },
    });
  }
});

test('readInput takes the body of POST and QUERY', async () => {
  for (const method of ['POST', 'QUERY']) {
    const request = new Request('https://x.test/toy', { method, headers, body: '{"n":1}' });
    expect(await readInput(request)).toEqual({ ok: true, value: { n: 1 } });
  }
});

test('readInput refuses a query beside a body, so that neither is passed over', async () => {
  const request = new Request(address, { method: 'POST', headers, body: '{"n":1}' });
  expect(await readInput(request)).toMatchObject({
    ok: false,
    faults: [{ code: 'malformed-query', path: [] }],
  });
});

test('readsQuery is true of GET and HEAD alone', () => {
  expect(['GET', 'HEAD', 'POST', 'QUERY', 'OPTIONS'].filter(readsQuery)).toEqual(['GET', 'HEAD']);
});

test('readInput hands on what is sound of a query beside its faults', async () => {
  expect(await readInput(new Request('https://x.test/toy?n=1&n=2&id=12'))).toEqual({
    ok: false,
    faults: [{ code: 'repeated-key', path: ['n'] }],
    sound: { id: '12', n: 1 },
  });
});
