import { expect } from 'vitest';
import type { Outcome } from '#core/outcome.ts';
import type { Resolved } from '#core/wish/reading.ts';
import { TEXT_KEYS } from '../../api/http/schemas/wire-schemas.ts';
import { unfoldQuery } from '../../api/http/unfold-query.ts';

/**
 * Checks that what was understood, given back as it is or by its canonical query, is understood alike.
 */
export function expectStable<Request, Input extends Request>(
  resolve: (request: Request) => Outcome<Resolved<Input>>,
  request: Request,
): void {
  const first = resolve(request);
  if (!first.ok) throw new Error(JSON.stringify(first.faults));
  expect(resolve(first.value.input)).toEqual(first);
  const unfolded = unfoldQuery(first.value.query, TEXT_KEYS);
  if (!unfolded.ok) throw new Error(JSON.stringify(unfolded.faults));
  expect(resolve(unfolded.value as Request)).toEqual(first);
}
