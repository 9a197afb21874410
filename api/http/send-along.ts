import type { MiddlewareHandler } from 'hono';

/** Puts headers on every answer that comes from behind it, whatever its status. */
export function sendAlong(headers: Readonly<Record<string, string>>): MiddlewareHandler {
  return async function addHeaders(context, next) {
    await next();
    for (const [name, value] of Object.entries(headers)) context.res.headers.set(name, value);
  };
}
