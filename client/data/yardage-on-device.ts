import type { YardageAnswer, YardageRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { checkShape } from './check-shape.ts';
import { readQuery } from './read-query.ts';
import { yardageRequestSchema } from './yardage-request-schema.ts';

/** What the core can say of pieces on a roll in the page without asking anybody; the entry of a bundle of its own. */
export interface YardageOnDevice {
  /** The same answer as the service gives to the same query. */
  readonly computeYardage: (query: string) => Outcome<YardageAnswer>;
}

/** Works yardage out on the device: the same core and so the same answer as the service. */
export function computeYardage(query: string): Outcome<YardageAnswer> {
  const request = checkShape<YardageRequest>(yardageRequestSchema, readQuery(query));
  if (!request.ok) return request;
  const resolved = resolveYardage(request.value);
  return resolved.ok ? { ok: true, value: planYardage(resolved.value) } : resolved;
}
