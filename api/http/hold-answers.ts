import { matchesEtag } from './etag.ts';
import { POLICY_HEADER, type RateLimiter, refuseExcess, type Surroundings } from './limit-rate.ts';
import { type MemoBounds, makeMemo } from './memo.ts';

type Bindings = Surroundings['Bindings'];

/** What answers a request, whatever else its runtime hands on. */
type Service<Rest extends readonly unknown[]> = (
  request: Request,
  env?: Bindings,
  ...rest: Rest
) => Response | Promise<Response>;

/** An answer in full, ready to be given again. */
interface Whole {
  readonly headers: Headers;
  readonly body: Uint8Array<ArrayBuffer>;
}

/** What was answered at one address. */
interface Held {
  readonly etag: string;
  /** Of a 304: those of the 200, but for the kind of what it does not carry. */
  readonly brief: Headers;
  /** Missing until somebody asks for it. */
  readonly whole?: Whole;
}

/** Enough for all that the pages of a busy shop ask, and an eighth of what an isolate may have. */
const BOUNDS: MemoBounds = { entries: 2000, bytes: 16_777_216, largest: 524_288 };

/** Once a request was counted and was one too many, the service refuses it in its own words, uncounted. */
const SPENT: RateLimiter = { limit: async () => ({ success: false }) };

/**
 * Puts a bounded memory before a service: what was answered to GET at an address with a tag and may be
 * kept by anyone is answered again with the same bytes and headers, before anything is routed, read or
 * reckoned. It is what a cache in front would do, where there is none or its copy is far away.
 *
 * An answer in full counts for the limit of rate where it counted before. A 304 from here does not: it
 * costs one look into a map. What is not held goes the whole way and is counted, whatever comes of it.
 */
export function holdAnswers<Rest extends readonly unknown[]>(
  service: Service<Rest>,
  bounds = BOUNDS,
): Service<Rest> {
  const memo = makeMemo<Held>(weigh, bounds);
  const answerAnew = async (request: Request, env?: Bindings, ...rest: Rest) => {
    const answered = await service(request, env, ...rest);
    const etag = answered.headers.get('ETag');
    if (etag === null || request.method !== 'GET' || !mayBeKept(answered)) return answered;
    const before = memo.find(request.url);
    const told = { etag, brief: omitKind(answered.headers) };
    if (answered.status === 304) {
      memo.keep(request.url, before ?? told);
      return answered;
    }
    const headers = new Headers(answered.headers);
    const body = new Uint8Array(await answered.arrayBuffer());
    memo.keep(request.url, { ...told, whole: { headers, body } });
    return new Response(body, { headers });
  };
  return (request, env, ...rest) => {
    const { method, url } = request;
    if (method !== 'GET' && method !== 'HEAD') return service(request, env, ...rest);
    const held = memo.find(url);
    if (held === undefined) return answerAnew(request, env, ...rest);
    if (matchesEtag(request.headers.get('If-None-Match'), held.etag)) {
      return new Response(null, { status: 304, headers: held.brief });
    }
    if (held.whole === undefined) return answerAnew(request, env, ...rest);
    const { headers, body } = held.whole;
    const write = () => new Response(method === 'HEAD' ? null : body, { headers });
    if (env?.RATE_LIMIT === undefined || !headers.has(POLICY_HEADER)) return write();
    return refuseExcess(request, env).then((refusal) =>
      refusal === undefined ? write() : service(request, { ...env, RATE_LIMIT: SPENT }, ...rest),
    );
  };
}

function mayBeKept({ status, headers }: Response): boolean {
  const isPublic = headers.get('Cache-Control')?.startsWith('public') ?? false;
  return (status === 200 || status === 304) && isPublic;
}

function omitKind(headers: Headers): Headers {
  const brief = new Headers(headers);
  brief.delete('Content-Type');
  return brief;
}

/** Bytes, near enough: headers are about a thousand, an address counts twice as key and in them. */
function weigh({ whole }: Held, url: string): number {
  return 2000 + 2 * url.length + (whole?.body.length ?? 0);
}
