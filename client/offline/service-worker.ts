import { answerRequest } from './answer-request.ts';
import { chooseRoad } from './choose-road.ts';

/** Set by the build: the digest of this version, its pages, and what of it is kept beforehand. */
declare const VERSION: string;
declare const PAGES: readonly string[];
declare const KEPT: readonly string[];

/** What of a worker's surroundings is used; the types of pages do not know them. */
interface WorkerScope extends EventTarget {
  readonly clients: { readonly claim: () => Promise<void> };
}
interface Extendable extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Fetching extends Extendable {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}

const PREFIX = 'ragbloom-';
const CACHE = PREFIX + VERSION;
const scope = globalThis as unknown as WorkerScope;
const site = { origin: location.origin, pages: PAGES, kept: KEPT };

const fill = async () => {
  const cache = await caches.open(CACHE);
  await cache.addAll(KEPT.map((path) => new Request(path, { cache: 'no-cache' })));
};

/** Only once no page of an older version is open any more: nothing calls this before its time. */
const takeOver = async () => {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await scope.clients.claim();
};

scope.addEventListener('install', (event) => (event as Extendable).waitUntil(fill()));
scope.addEventListener('activate', (event) => (event as Extendable).waitUntil(takeOver()));
scope.addEventListener('fetch', (event) => {
  const fetching = event as Fetching;
  const { request } = fetching;
  const { method, url, mode, referrer } = request;
  const road = chooseRoad({ method, url, isPage: mode === 'navigate', referrer }, site);
  if (road === 'none') return;
  const ask = (asked: Request) => fetch(asked);
  const stay = (work: Promise<unknown>) => fetching.waitUntil(work);
  const answer = caches
    .open(CACHE)
    .then((cache) => answerRequest({ request, cache, ask, stay }, road));
  fetching.respondWith(answer);
});
