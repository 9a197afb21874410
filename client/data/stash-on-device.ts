import type { StashAnswer, StashRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { planStash } from '#core/stash.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { checkShape } from './check-shape.ts';
import { readQuery } from './read-query.ts';
import { stashRequestSchema } from './stash-request-schema.ts';

/** What the core can make of a stash in the page without asking anybody; the entry of a bundle of its own. */
export interface StashOnDevice {
  /** The same answer as the service gives to the same query. */
  readonly computeStash: (query: string) => Outcome<StashAnswer>;
}

/** Works a stash out on the device: the same core and so the same answer as the service. */
export function computeStash(query: string): Outcome<StashAnswer> {
  const request = checkShape<StashRequest>(stashRequestSchema, readQuery(query));
  if (!request.ok) return request;
  const resolved = resolveStash(request.value);
  return resolved.ok ? { ok: true, value: planStash(resolved.value) } : resolved;
}
