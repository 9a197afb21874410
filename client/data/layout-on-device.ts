import type { LayoutAnswer, LayoutRequest } from '#core/contract.ts';
import { planLayout } from '#core/layout.ts';
import type { Outcome } from '#core/outcome.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { checkShape } from './check-shape.ts';
import { layoutRequestSchema } from './layout-request-schema.ts';
import { readQuery } from './read-query.ts';

/** What lays prints out in the page without asking anybody; the entry of a bundle of its own. */
export interface LayoutOnDevice {
  /** The same answer as the service gives to the same query. */
  readonly computeLayout: (query: string) => Outcome<LayoutAnswer>;
}

/** Lays prints out on the device: the same core and so the same answer as the service. */
export function computeLayout(query: string): Outcome<LayoutAnswer> {
  const request = checkShape<LayoutRequest>(layoutRequestSchema, readQuery(query));
  if (!request.ok) return request;
  const resolved = resolveLayout(request.value);
  return resolved.ok ? { ok: true, value: planLayout(resolved.value) } : resolved;
}
