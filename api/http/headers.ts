/**
 * Headers as frozen records: one is picked for each kind of answer and nothing is added piece by piece,
 * since header middleware costs more than a whole plan does.
 */

/** On every answer, a failure too: any page may read it, none may frame it, nothing in it runs. */
const EVERYWHERE = {
  'Access-Control-Allow-Origin': '*',
  'Access-Control-Expose-Headers':
    'Accept-Query, Allow, Content-Location, Deprecation, ETag, Link, RateLimit-Policy, Retry-After, Sunset',
  'Cross-Origin-Resource-Policy': 'cross-origin',
  'Strict-Transport-Security': 'max-age=31536000',
  'X-Content-Type-Options': 'nosniff',
} as const;

const LOCKED = {
  ...EVERYWHERE,
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'",
} as const;

/** A 200 to GET, HEAD and QUERY: the same input gives the same bytes, so any cache may keep it. */
export const CACHED_HEADERS = Object.freeze({
  ...LOCKED,
  'Cache-Control': 'public, max-age=86400, stale-while-revalidate=604800',
});

/** What must not be kept: problems, answers to POST, the state of the service. */
export const UNCACHED_HEADERS = Object.freeze({ ...LOCKED, 'Cache-Control': 'no-store' });

/** A problem of RFC 9457. */
export const PROBLEM_HEADERS = Object.freeze({
  ...UNCACHED_HEADERS,
  'Content-Type': 'application/problem+json',
});

/** An answer to OPTIONS; browsers may remember it for a day. */
export const OPTIONS_HEADERS = Object.freeze({
  ...LOCKED,
  'Access-Control-Allow-Headers': 'Content-Type, If-None-Match',
  'Access-Control-Max-Age': '86400',
});

/**
 * Headers of a page of plain HTML with one style and no script.
 *
 * @param styleHash the style as a source of Content Security Policy, such as `sha256-…`
 */
export function makePageHeaders(styleHash: string): Readonly<Record<string, string>> {
  return Object.freeze({
    ...EVERYWHERE,
    'Cache-Control': 'public, max-age=86400',
    'Content-Security-Policy': `default-src 'none'; style-src '${styleHash}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
    'Content-Type': 'text/html; charset=utf-8',
  });
}

/**
 * Headers of a page that anybody may frame. It may find itself in a sandbox where its own origin counts
 * for nothing, so the origin that its scripts come from is named beside `'self'`.
 *
 * @param origin of the service, such as `https://a.test`
 * @param styleHash one style of its own as a source of Content Security Policy, or nothing
 */
export function makeFrameHeaders(origin: string, styleHash = ''): Readonly<Record<string, string>> {
  const own = `'self' ${origin}`;
  const policy = [
    "default-src 'none'",
    `script-src ${own}`,
    `style-src ${own}${styleHash === '' ? '' : ` '${styleHash}'`}`,
    `img-src ${own} data:`,
    `connect-src ${own}`,
    "base-uri 'none'",
    `form-action ${own}`,
    'frame-ancestors *',
    "require-trusted-types-for 'script'",
    'trusted-types lit-html',
  ];
  return {
    ...EVERYWHERE,
    'Cache-Control': 'public, max-age=3600, stale-while-revalidate=86400',
    'Content-Security-Policy': policy.join('; '),
    'Content-Type': 'text/html; charset=utf-8',
    'Referrer-Policy': 'no-referrer',
  };
}
