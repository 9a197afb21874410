import { makePageHeaders } from '../http/headers.ts';
import { answerProblem } from '../http/problem.ts';
import { PROBLEM_STYLE_HASH, writeNotFoundPage } from './problem-page.ts';

const VARY = { Vary: 'Accept' } as const;
const HEADERS = Object.freeze({
  ...makePageHeaders(PROBLEM_STYLE_HASH),
  ...VARY,
  'Cache-Control': 'no-store',
});

/**
 * Says that an address has nothing: to a browser, which asks for HTML, by a page with the ways on, to a program
 * by a problem. Below `/v1/` it is a problem for both.
 */
export function answerNotFound(request: Request): Response {
  const { pathname } = new URL(request.url);
  const asksForPage = request.headers.get('Accept')?.includes('text/html') ?? false;
  if (asksForPage && !/^\/v1(?:\/|$)/.test(pathname)) {
    return new Response(writeNotFoundPage(), { status: 404, headers: HEADERS });
  }
  const fault = { code: 'not-found', path: [], received: pathname } as const;
  return answerProblem([fault], { headers: VARY });
}
