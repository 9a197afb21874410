import { makeEtag, matchesEtag } from '../http/etag.ts';

/**
 * Sends HTML with a tag of its bytes, or 304 where the caller holds them. What tells of a fault is kept
 * by nobody.
 *
 * @param status 200, or that of the fault
 */
export async function sendPage(
  request: Request,
  html: string,
  { status, headers }: { readonly status: number; readonly headers: HeadersInit },
): Promise<Response> {
  const all = new Headers(headers);
  if (status !== 200) {
    all.set('Cache-Control', 'no-store');
    return new Response(html, { status, headers: all });
  }
  const etag = await makeEtag(html);
  all.set('ETag', etag);
  const isHeld = matchesEtag(request.headers.get('If-None-Match'), etag);
  return isHeld
    ? new Response(null, { status: 304, headers: all })
    : new Response(html, { headers: all });
}
