import type { Hono } from 'hono';
import { allowMethods } from '../http/allow-methods.ts';
import { CACHED_HEADERS } from '../http/headers.ts';
import type { Surroundings } from '../http/limit-rate.ts';

/**
 * Serves the description of the service, a file that stands among the pages: through here it gets
 * the headers of an answer, so that any page may read it and any cache keep it.
 */
export function mountDocuments(app: Hono<Surroundings>): void {
  const path = '/openapi.json';
  app.get(path, async (context) => {
    const found = await context.env?.ASSETS?.fetch(context.req.raw);
    if (found === undefined || found.status === 404) return context.notFound();
    const headers = new Headers(CACHED_HEADERS);
    for (const name of ['Content-Type', 'ETag']) {
      const value = found.headers.get(name);
      if (value !== null) headers.set(name, value);
    }
    return new Response(found.body, { status: found.status, headers });
  });
  app.all(path, allowMethods(['GET', 'HEAD']));
}
