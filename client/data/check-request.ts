import type { PlanRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { checkShape } from './check-shape.ts';
import { planRequestSchema } from './plan-request-schema.ts';

/** Checks that a value has the shape of a request for a plan. */
export function checkRequest(value: unknown): Outcome<PlanRequest> {
  return checkShape<PlanRequest>(planRequestSchema, value);
}
