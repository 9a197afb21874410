import * as v from 'valibot';
import { type Loaded, loadAnswer, type Source } from './load-answer.ts';
import { type ShownWash, washAnswerSchema } from './wash-answer-schema.ts';
import type { WashOnDevice } from './wash-on-device.ts';

/** Where answers about a wash come from. */
export type WashSource = Source<WashOnDevice>;

/** What a wash does and who worked it out; or what is wrong with the swatches; or nobody to ask. */
export type LoadedWash = Loaded<ShownWash>;

/**
 * Asks what a wash does.
 *
 * @param query swatches and quilt, without the question mark.
 * @param signal stops the asking when something newer was typed; the promise then rejects.
 */
export function loadWash(
  query: string,
  source: WashSource,
  signal: AbortSignal,
): Promise<LoadedWash> {
  return loadAnswer<ShownWash, WashOnDevice>(
    {
      address: `/v1/wash-shrinkage?${query}`,
      isAnswer: (body) => v.is(washAnswerSchema, body),
      compute: ({ computeWash }) => computeWash(query),
    },
    source,
    signal,
  );
}
