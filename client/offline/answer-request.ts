import type { Road } from './choose-road.ts';

/** Milliseconds after which what is kept is better than waiting on. */
const PATIENCE = 3000;

/** What is asked for, of whom, and where what comes of it is kept. */
export interface Errand {
  readonly request: Request;
  readonly cache: Pick<Cache, 'match' | 'put'>;
  readonly ask: (request: Request) => Promise<Response>;
  /** Stay awake for work that nobody waits for. */
  readonly stay: (work: Promise<unknown>) => void;
}

/**
 * Answers a request from what is kept or from the network, and keeps what the network gave; where that cannot be kept,
 * it is still the answer. A page is kept as it is when nothing is asked of it, and stands for every question: the answer
 * to one never shows for another.
 *
 * @returns rejects where neither has it.
 */
export async function answerRequest(
  { request, cache, ask, stay }: Errand,
  road: Exclude<Road, 'none'>,
): Promise<Response> {
  const [path = '', question = ''] = request.url.split('?');
  const isPage = request.mode === 'navigate';
  const key = isPage ? path : request.url;
  const find = () => cache.match(key, { ignoreVary: true });
  const keep = async (response: Response) => {
    if (response.ok && !response.redirected) await cache.put(key, response.clone());
  };
  const fetchAndKeep = () => {
    const asked = ask(request);
    const isAnswered = isPage && question !== '';
    const kept = isAnswered ? asked.then(() => ask(new Request(path))) : asked;
    stay(kept.then(keep).catch(() => undefined));
    return asked;
  };
  if (road === 'cache') return (await find()) ?? fetchAndKeep();
  const asked = fetchAndKeep();
  const first = await Promise.race([asked.catch(() => undefined), rest(PATIENCE)]);
  return first ?? (await find()) ?? asked;
}

function rest(time: number): Promise<undefined> {
  return new Promise((done) => setTimeout(() => done(undefined), time));
}
