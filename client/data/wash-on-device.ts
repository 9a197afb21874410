import type { WashAnswer, WashRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { checkShape } from './check-shape.ts';
import { readQuery } from './read-query.ts';
import { washRequestSchema } from './wash-request-schema.ts';

/** What the core can tell of a wash in the page without asking anybody; the entry of a bundle of its own. */
export interface WashOnDevice {
  /** The same answer as the service gives to the same query. */
  readonly computeWash: (query: string) => Outcome<WashAnswer>;
}

/** Works a wash out on the device: the same core and so the same answer as the service. */
export function computeWash(query: string): Outcome<WashAnswer> {
  const request = checkShape<WashRequest>(washRequestSchema, readQuery(query));
  if (!request.ok) return request;
  const resolved = resolveWash(request.value);
  return resolved.ok ? { ok: true, value: predictWash(resolved.value) } : resolved;
}
