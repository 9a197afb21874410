import type { StashAnswer, StashPiece, StashRequest } from '#core/contract.ts';
import { planStash } from '#core/stash.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { deepFreeze } from './deep-freeze.ts';

/** The answer to a stash that can be understood. */
export function answerStash(request: StashRequest): StashAnswer {
  const read = resolveStash(request);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return planStash(deepFreeze(read.value));
}

/** A piece for the top, in inches unless the request says otherwise. */
export function topPiece(
  id: string,
  width: number,
  length: number,
  own: Partial<StashPiece> = {},
): StashPiece {
  return { id, role: 'top', width, length, ...own };
}
