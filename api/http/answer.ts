import { SIZE_LIMITS } from '#core/limits.ts';
import { makeEtag, matchesEtag } from './etag.ts';
import { CACHED_HEADERS, UNCACHED_HEADERS } from './headers.ts';

/** An answer that is named before it is reckoned. */
export interface NamedAnswer {
  readonly path: string;
  /** Canonical query; with the path before it the canonical address. */
  readonly query: string;
  /** Version of what reckons. */
  readonly engine: string;
  readonly mediaType: string;
  /** Gives the body; not called where the caller holds it already. */
  readonly write: () => string;
}

/**
 * Answers 200, or 304 without reckoning where `If-None-Match` names these bytes. GET, HEAD, POST and
 * QUERY of one input give the same bytes; `Content-Location` names the canonical address where the
 * request came to another one, or not by GET. It is left out where that address is too long to be asked.
 */
export async function answer(request: Request, named: NamedAnswer): Promise<Response> {
  const { method, url } = request;
  const etag = await nameAnswer(named);
  const self = `${named.path}?${named.query}`;
  const isCanonical = isRead(method) && isAt(url, self);
  const isAskable = named.query.length <= SIZE_LIMITS.query;
  const headers = {
    ...(method === 'POST' ? UNCACHED_HEADERS : CACHED_HEADERS),
    ETag: etag,
    ...(isCanonical || !isAskable ? {} : { 'Content-Location': self }),
  };
  // RFC 9110 §13.1.2 has 304 for methods that only read; QUERY is one (RFC 10008).
  if (method !== 'POST' && matchesEtag(request.headers.get('If-None-Match'), etag)) {
    return new Response(null, { status: 304, headers });
  }
  return new Response(method === 'HEAD' ? null : named.write(), {
    headers: { ...headers, 'Content-Type': named.mediaType },
  });
}

/** The tag of an answer, known before it is reckoned. */
export function nameAnswer({ engine, path, query }: Omit<NamedAnswer, 'write'>): Promise<string> {
  return makeEtag(`${engine} ${path}?${query}`);
}

/** An address is compared as its parser writes it, which takes longer than to see that it is the same. */
function isAt(url: string, self: string): boolean {
  return url.slice(url.indexOf('/', 'https://'.length)) === self || new URL(self, url).href === url;
}

function isRead(method: string): boolean {
  return method === 'GET' || method === 'HEAD';
}
