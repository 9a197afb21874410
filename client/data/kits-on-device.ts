import type { KitsAnswer, KitsRequest } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import type { Outcome } from '#core/outcome.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { checkShape } from './check-shape.ts';
import { kitsRequestSchema } from './kits-request-schema.ts';
import { readQuery } from './read-query.ts';

/** What the core can make of bolts in the page without asking anybody; the entry of a bundle of its own. */
export interface KitsOnDevice {
  /** The same answer as the service gives to the same query. */
  readonly computeKits: (query: string) => Outcome<KitsAnswer>;
}

/** Works kits out on the device: the same core and so the same answer as the service. */
export function computeKits(query: string): Outcome<KitsAnswer> {
  const request = checkShape<KitsRequest>(kitsRequestSchema, readQuery(query));
  if (!request.ok) return request;
  const resolved = resolveKits(request.value);
  return resolved.ok ? { ok: true, value: planKits(resolved.value) } : resolved;
}
