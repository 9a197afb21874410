import type { MiddlewareHandler } from 'hono';
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

/** Where the policy is told: on every answer that counts. */
export const POLICY_HEADER = 'RateLimit-Policy';

/** The policy as a structured field (draft-ietf-httpapi-ratelimit-headers). */
export const RATE_LIMIT_POLICY = `"default";q=${RATE_LIMIT.limit};w=${RATE_LIMIT.period}`;

/**
 * Counts a request before anything is made of it, whatever comes of it, and refuses it with 429 where it
 * is one too many: to find an input wrong, or to find that the caller holds the answer, costs as much as to
 * understand it. The platform says no more than yes or no, so no rest is told.
 */
export function limitRate(): MiddlewareHandler<Surroundings> {
  return async function countRequest(context, next) {
    // Without a runtime around it, the service has no surroundings at all.
    const env = context.env as Surroundings['Bindings'] | undefined;
    if (env?.RATE_LIMIT === undefined) return next();
    const refusal = await refuseExcess(context.req.raw, env);
    if (refusal !== undefined) return refusal;
    await next();
    tellPolicy(context.res, env);
  };
}

/** Tells the policy on an answer that was counted: by that an answer that is held counts again. */
export function tellPolicy({ headers }: Response, env: Surroundings['Bindings'] | undefined): void {
  if (env?.RATE_LIMIT !== undefined) headers.set(POLICY_HEADER, RATE_LIMIT_POLICY);
}

/** Counts one more, and gives the answer to one too many. Callers are told apart by their address. */
export async function refuseExcess(
  { headers }: Request,
  { RATE_LIMIT: limiter }: Surroundings['Bindings'],
): Promise<Response | undefined> {
  const key = headers.get('CF-Connecting-IP') ?? 'everyone';
  const counted = await limiter?.limit({ key });
  if (counted === undefined || counted.success) return undefined;
  const { limit, period } = RATE_LIMIT;
  return writeKindOfProblem('too-many-requests', {
    detail: `More than ${limit} requests came within ${period} seconds: wait ${period} seconds, or ask for many things at once at /v1/batch.`,
    headers: { 'Retry-After': String(period), [POLICY_HEADER]: RATE_LIMIT_POLICY },
  });
}
