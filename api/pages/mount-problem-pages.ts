import type { Hono } from 'hono';
import { allowMethods } from '../http/allow-methods.ts';
import { makePageHeaders } from '../http/headers.ts';
import type { Surroundings } from '../http/limit-rate.ts';
import { PROBLEM_STYLE_HASH, writeProblemList, writeProblemPage } from './problem-page.ts';

/** Puts a page at every address that a problem may have as its `type`, and a list of them. */
export function mountProblemPages(app: Hono<Surroundings>): void {
  const headers = makePageHeaders(PROBLEM_STYLE_HASH);
  app.get('/problems', () => new Response(writeProblemList(), { headers }));
  app.get('/problems/:slug', (context) => {
    const page = writeProblemPage(context.req.param('slug'));
    return page === undefined ? context.notFound() : new Response(page, { headers });
  });
  for (const path of ['/problems', '/problems/:slug']) app.all(path, allowMethods(['GET', 'HEAD']));
}
