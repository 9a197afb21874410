import { createContext, runInContext } from 'node:vm';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { bundleOffline } from '../../../client/offline/bundle-offline.ts';

const origin = 'https://quilts.example';

/** What a browser gives a service worker, as far as ours uses it, with texts in place of responses. */
function makeSurroundings(names: readonly string[]) {
  const listeners = new Map<string, (event: object) => void>();
  const held = new Map<string, string>();
  const caches = {
    keys: async () => [...names],
    delete: vi.fn(async () => true),
    open: async () => ({
      addAll: async (requests: readonly Request[]) => {
        for (const { url } of requests) held.set(url, 'kept');
      },
      match: async (key: string) => (held.has(key) ? new Response(held.get(key) ?? '') : undefined),
      put: async () => undefined,
    }),
  };
  const claim = vi.fn(async () => undefined);
  const fetch = vi.fn(async () => new Response('new'));
  const given = {
    addEventListener: (name: string, listener: (event: object) => void) =>
      listeners.set(name, listener),
    caches,
    clients: { claim },
    fetch,
    location: { origin },
    Request: class extends Request {
      constructor(path: string, init?: RequestInit) {
        super(new URL(path, origin), init);
      }
    },
    Response,
    URL,
    setTimeout,
  };
  return { given, listeners, held, caches, claim, fetch };
}

describe('the service worker', () => {
  let script = '';
  let version = '';
  beforeAll(async () => {
    const assets = { 'counter.html': '<!--version-->', 'index.html': 'Plan' };
    const files = await bundleOffline(assets, { page: 'counter.html', lazy: [] });
    script = `${files['service-worker.js']}`;
    version = `${files['counter.html']}`;
  });

  const start = (names: readonly string[] = []) => {
    const around = makeSurroundings(names);
    runInContext(script, createContext(around.given));
    const fire = async (name: string) => {
      let work: Promise<unknown> | undefined;
      around.listeners.get(name)?.({
        waitUntil: (given: Promise<unknown>) => {
          work = given;
        },
      });
      await work;
    };
    return { ...around, fire };
  };

  test('when it is installed it keeps its files, and takes nothing over', async () => {
    const { fire, held, claim, caches } = start(['ragbloom-older']);
    await fire('install');
    expect([...held.keys()]).toEqual([`${origin}/counter`]);
    expect(claim).not.toHaveBeenCalled();
    expect(caches.delete).not.toHaveBeenCalled();
  });

  test('when its time comes it lets go of what older versions kept, and of nothing else', async () => {
    const { fire, caches, claim } = start(['ragbloom-older', `ragbloom-${version}`, 'other']);
    await fire('activate');
    expect(caches.delete.mock.calls).toEqual([['ragbloom-older']]);
    expect(claim).toHaveBeenCalledOnce();
  });

  test('it answers for the page that it keeps, and stays out of the way of the service', async () => {
    const { fire, listeners, fetch } = start();
    await fire('install');
    const ask = (path: string) => {
      let answer: Promise<Response> | undefined;
      const request = { method: 'GET', url: origin + path, mode: 'navigate', referrer: '' };
      listeners.get('fetch')?.({
        request,
        waitUntil: () => undefined,
        respondWith: (given: Promise<Response>) => {
          answer = given;
        },
      });
      return answer;
    };
    expect(await (await ask('/counter?target.size=lap'))?.text()).toBe('kept');
    expect(ask('/v1/plan?target.size=lap')).toBeUndefined();
    expect(fetch).not.toHaveBeenCalled();
    expect(await (await ask('/'))?.text()).toBe('new');
  });
});
