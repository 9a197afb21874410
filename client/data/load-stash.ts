import * as v from 'valibot';
import { addressQuestion } from './address-question.ts';
import { type Loaded, loadAnswer, type Source } from './load-answer.ts';
import { type ShownStash, stashAnswerSchema } from './stash-answer-schema.ts';
import type { StashOnDevice } from './stash-on-device.ts';

/** Where answers about a stash come from. */
export type StashSource = Source<StashOnDevice>;

/** What a stash gives and who worked it out; or what is wrong with it; or nobody to ask. */
export type LoadedStash = Loaded<ShownStash>;

/**
 * Asks what a stash gives.
 *
 * @param query the pieces and what is wished, without the question mark.
 * @param signal stops the asking when something newer was typed; the promise then rejects.
 */
export function loadStash(
  query: string,
  source: StashSource,
  signal: AbortSignal,
): Promise<LoadedStash> {
  return loadAnswer<ShownStash, StashOnDevice>(
    {
      ...addressQuestion('/v1/stash', query),
      isAnswer: (body) => v.is(stashAnswerSchema, body),
      compute: ({ computeStash }) => computeStash(query),
    },
    source,
    signal,
  );
}
