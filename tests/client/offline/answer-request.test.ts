import { beforeEach, describe, expect, test, vi } from 'vitest';
import { answerRequest } from '../../../client/offline/answer-request.ts';

/** A cache that holds texts by address. */
function makeCache(texts: Readonly<Record<string, string>> = {}) {
  const held = new Map(Object.entries(texts));
  return {
    held,
    match: async (key: RequestInfo | URL) => {
      const text = held.get(String(key));
      return text === undefined ? undefined : new Response(text);
    },
    put: async (key: RequestInfo | URL, response: Response) => {
      held.set(String(key), await response.text());
    },
  };
}

const address = 'https://quilts.example/wash?unit=cm';
/** Node knows no request of a browser that opens a page, so one is described. */
const opened = { url: address, mode: 'navigate' } as unknown as Request;
const file = new Request('https://quilts.example/look/page.css');
const gives = (text: string, status = 200) => vi.fn(async () => new Response(text, { status }));
const fails = () => vi.fn(async () => Promise.reject(new TypeError('No network')));
const works: Promise<unknown>[] = [];
const stay = (work: Promise<unknown>) => void works.push(work);
const read = async (answer: Promise<Response>) => (await answer).text();

describe('answerRequest', () => {
  beforeEach(() => {
    works.length = 0;
  });

  test('from what is kept, the network is not asked', async () => {
    const cache = makeCache({ [file.url]: 'kept' });
    const ask = gives('new');
    expect(await read(answerRequest({ request: file, cache, ask, stay }, 'cache'))).toBe('kept');
    expect(ask).not.toHaveBeenCalled();
  });

  test('what is not kept is fetched and kept', async () => {
    const cache = makeCache();
    const ask = gives('new');
    expect(await read(answerRequest({ request: file, cache, ask, stay }, 'cache'))).toBe('new');
    await Promise.all(works);
    expect(cache.held.get(file.url)).toBe('new');
  });

  test('a page is kept as it is when nothing is asked, and stands for every question', async () => {
    const cache = makeCache();
    const ask = vi.fn(async ({ url }: Request) => new Response(`page of ${url}`));
    const answer = answerRequest({ request: opened, cache, ask, stay }, 'network');
    expect(await read(answer)).toBe(`page of ${address}`);
    await Promise.all(works);
    const plain = 'https://quilts.example/wash';
    expect([...cache.held]).toEqual([[plain, `page of ${plain}`]]);
    const other = { url: `${plain}?unit=in`, mode: 'navigate' } as unknown as Request;
    const offline = answerRequest({ request: other, cache, ask: fails(), stay }, 'network');
    expect(await read(offline)).toBe(`page of ${plain}`);
  });

  test('a page that nothing is asked of is fetched once', async () => {
    const cache = makeCache();
    const ask = gives('page');
    const request = { url: 'https://quilts.example/wash', mode: 'navigate' } as unknown as Request;
    await answerRequest({ request, cache, ask, stay }, 'network');
    await Promise.all(works);
    expect(cache.held.get(request.url)).toBe('page');
    expect(ask).toHaveBeenCalledOnce();
  });

  test('a cache that is full, or slow, holds no answer back', async () => {
    const full = { ...makeCache(), put: async () => Promise.reject(new DOMException('Full')) };
    const given = { request: file, ask: gives('new'), stay };
    expect(await read(answerRequest({ ...given, cache: full }, 'network'))).toBe('new');
    await expect(Promise.all(works)).resolves.toBeDefined();
    const slow = { ...makeCache(), put: () => new Promise<void>(() => undefined) };
    expect(await read(answerRequest({ ...given, cache: slow }, 'cache'))).toBe('new');
  });

  test('the network comes first where it answers in time', async () => {
    const cache = makeCache({ [file.url]: 'kept' });
    expect(
      await read(answerRequest({ request: file, cache, ask: gives('new'), stay }, 'network')),
    ).toBe('new');
  });

  test('a network that takes longer than three seconds gives way to what is kept', async () => {
    vi.useFakeTimers();
    const cache = makeCache({ [file.url]: 'kept' });
    const ask = () => new Promise<Response>(() => undefined);
    const answer = read(answerRequest({ request: file, cache, ask, stay }, 'network'));
    await vi.advanceTimersByTimeAsync(2999);
    let isThere = false;
    void answer.then(() => {
      isThere = true;
    });
    await vi.advanceTimersByTimeAsync(0);
    expect(isThere).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(await answer).toBe('kept');
    vi.useRealTimers();
  });

  test('a failure of the service is handed on and not kept', async () => {
    const cache = makeCache();
    const answer = await answerRequest(
      { request: file, cache, ask: gives('x', 500), stay },
      'network',
    );
    await Promise.all(works);
    expect(answer.status).toBe(500);
    expect(cache.held.size).toBe(0);
  });

  test('what neither has is told', async () => {
    const asked = { request: file, cache: makeCache(), ask: fails(), stay };
    await expect(answerRequest(asked, 'network')).rejects.toThrow('No network');
    await expect(answerRequest(asked, 'cache')).rejects.toThrow('No network');
  });
});
