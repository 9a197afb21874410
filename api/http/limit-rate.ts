import type { Context, MiddlewareHandler } from 'hono';
import { writeKindOfProblem } from './problem.ts';

/** What the platform's binding for limits of rate can do: count one more, and say whether it was too many. */
export interface RateLimiter {
  readonly limit: (options: { readonly key: string }) => Promise<{ readonly success: boolean }>;
}

/** What the runtime gives the service; without a limiter there is no limit, without files no document. */
export interface Surroundings {
  readonly Bindings: {
    readonly RATE_LIMIT?: RateLimiter;
    readonly ASSETS?: { readonly fetch: (request: Request) => Promise<Response> };
  };
}

/** Requests that one caller is answered in so many seconds; wrangler.toml says the same to the platform. */
export const RATE_LIMIT = { limit: 600, period: 60 } as const;

/** The policy as a structured field (draft-ietf-httpapi-ratelimit-headers). */
export const RATE_LIMIT_POLICY = `"default";q=${RATE_LIMIT.limit};w=${RATE_LIMIT.period}`;

/**
 * Counts a request before anything is made of it, and refuses it with 429 where it is one too many.
 * A request with `If-None-Match` is not counted yet: whether it costs anything shows only later, and
 * {@link refuseExcess} counts it then. The platform says no more than yes or no, so no rest is told.
 */
export function limitRate(): MiddlewareHandler<Surroundings> {
  return async function countRequest(context, next) {
    if (findLimiter(context) === undefined) return next();
    const refusal = mayBeHeld(context.req.raw) ? undefined : await refuseExcess(context);
    if (refusal !== undefined) return refusal;
    await next();
    context.res.headers.set('RateLimit-Policy', RATE_LIMIT_POLICY);
  };
}

/** Whether the caller may hold the answer already, so that it costs next to nothing. */
export function mayBeHeld({ method, headers }: Request): boolean {
  return method !== 'POST' && headers.has('If-None-Match');
}

/** Counts one more, and gives the answer to one too many. Callers are told apart by their address. */
export async function refuseExcess(
  context: Pick<Context<Surroundings>, 'env' | 'req'>,
): Promise<Response | undefined> {
  const limiter = findLimiter(context);
  if (limiter === undefined) return undefined;
  const key = context.req.header('CF-Connecting-IP') ?? 'everyone';
  const { success } = await limiter.limit({ key });
  if (success) return undefined;
  const { limit, period } = RATE_LIMIT;
  return writeKindOfProblem('too-many-requests', {
    detail: `More than ${limit} requests came within ${period} seconds: wait ${period} seconds, or ask for many things at once at /v1/batch.`,
    headers: { 'Retry-After': String(period), 'RateLimit-Policy': RATE_LIMIT_POLICY },
  });
}

/** Without a runtime around it, the service has no surroundings at all. */
function findLimiter({ env }: Pick<Context<Surroundings>, 'env'>): RateLimiter | undefined {
  return (env as Surroundings['Bindings'] | undefined)?.RATE_LIMIT;
}
