import { SIZE_LIMITS } from '#core/limits.ts';
import { makeEtag, matchesEtag } from './etag.ts';
import { CACHED_HEADERS, UNCACHED_HEADERS } from './headers.ts';

/** An answer that is named before it is reckoned. */
export interface NamedAnswer {
  /** Canonical address: path and query. */
  readonly self: string;
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
  const etag = await makeEtag(`${named.engine} ${named.self}`);
  const isCanonical = isRead(method) && new URL(named.self, url).href === url;
  const isAskable = named.self.length <= SIZE_LIMITS.query;
  const headers = {
    ...(method === 'POST' ? UNCACHED_HEADERS : CACHED_HEADERS),
    ETag: etag,
    ...(isCanonical || !isAskable ? {} : { 'Content-Location': named.self }),
  };
  // RFC 9110 §13.1.2 has 304 for methods that only read; QUERY is one (RFC 10008).
  if (method !== 'POST' && matchesEtag(request.headers.get('If-None-Match'), etag)) {
    return new Response(null, { status: 304, headers });
  }
  return new Response(named.write(), {
    headers: { ...headers, 'Content-Type': named.mediaType },
  });
}

function isRead(method: string): boolean {
  return method === 'GET' || method === 'HEAD';
}
