import type { Road } from './choose-road.ts';

/** Milliseconds after which what is kept is better than waiting on. */
const PATIENCE = 3000;

/** What is asked for, of whom, and where what comes of it is kept. */
export interface Errand {
  readonly request: Request;
  readonly cache: Pick<Cache, 'match' | 'put'>;
  readonly ask: (request: Request) => Promise<Response>;
}

/**
 * Answers a request from what is kept or from the network, and keeps what the network gave. A page is kept under its
 * path alone, whatever is asked behind it.
 *
 * @returns rejects where neither has it.
 */
export async function answerRequest(
  { request, cache, ask }: Errand,
  road: Exclude<Road, 'none'>,
): Promise<Response> {
  const [path = ''] = request.url.split('?');
  const key = request.mode === 'navigate' ? path : request.url;
  const find = () => cache.match(key, { ignoreVary: true });
  const fetchAndKeep = async () => {
    const response = await ask(request);
    if (response.ok && !response.redirected) await cache.put(key, response.clone());
    return response;
  };
  if (road === 'cache') return (await find()) ?? fetchAndKeep();
  const asked = fetchAndKeep();
  const first = await Promise.race([asked.catch(() => undefined), rest(PATIENCE)]);
  return first ?? (await find()) ?? asked;
}

function rest(time: number): Promise<undefined> {
  return new Promise((done) => setTimeout(() => done(undefined), time));
}
