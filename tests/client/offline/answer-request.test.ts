import { describe, expect, test, vi } from 'vitest';
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
const read = async (answer: Promise<Response>) => (await answer).text();

describe('answerRequest', () => {
  test('from what is kept, the network is not asked', async () => {
    const cache = makeCache({ [file.url]: 'kept' });
    const ask = gives('new');
    expect(await read(answerRequest({ request: file, cache, ask }, 'cache'))).toBe('kept');
    expect(ask).not.toHaveBeenCalled();
  });

  test('what is not kept is fetched and kept', async () => {
    const cache = makeCache();
    const ask = gives('new');
    expect(await read(answerRequest({ request: file, cache, ask }, 'cache'))).toBe('new');
    expect(cache.held.get(file.url)).toBe('new');
  });

  test('a page is kept under its path alone, and found whatever is asked behind it', async () => {
    const cache = makeCache();
    await answerRequest({ request: opened, cache, ask: gives('page') }, 'network');
    expect([...cache.held.keys()]).toEqual(['https://quilts.example/wash']);
    expect(await read(answerRequest({ request: opened, cache, ask: fails() }, 'network'))).toBe(
      'page',
    );
  });

  test('the network comes first where it answers in time', async () => {
    const cache = makeCache({ [file.url]: 'kept' });
    expect(await read(answerRequest({ request: file, cache, ask: gives('new') }, 'network'))).toBe(
      'new',
    );
  });

  test('a network that takes longer than three seconds gives way to what is kept', async () => {
    vi.useFakeTimers();
    const cache = makeCache({ [file.url]: 'kept' });
    const ask = () => new Promise<Response>(() => undefined);
    const answer = read(answerRequest({ request: file, cache, ask }, 'network'));
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
    const answer = await answerRequest({ request: file, cache, ask: gives('x', 500) }, 'network');
    expect(answer.status).toBe(500);
    expect(cache.held.size).toBe(0);
  });

  test('what neither has is told', async () => {
    const asked = { request: file, cache: makeCache(), ask: fails() };
    await expect(answerRequest(asked, 'network')).rejects.toThrow('No network');
    await expect(answerRequest(asked, 'cache')).rejects.toThrow('No network');
  });
});
