import * as v from 'valibot';
import { addressQuestion } from './address-question.ts';
import { kitsAnswerSchema, type ShownKits } from './kits-answer-schema.ts';
import type { KitsOnDevice } from './kits-on-device.ts';
import { type Loaded, loadAnswer, type Source } from './load-answer.ts';

/** Where answers about kits come from. */
export type KitsSource = Source<KitsOnDevice>;

/** What bolts give and who worked it out; or what is wrong with them; or nobody to ask. */
export type LoadedKits = Loaded<ShownKits>;

/**
 * Asks how many kits bolts give.
 *
 * @param query the bolts and the kit, without the question mark.
 * @param signal stops the asking when something newer was typed; the promise then rejects.
 */
export function loadKits(
  query: string,
  source: KitsSource,
  signal: AbortSignal,
): Promise<LoadedKits> {
  return loadAnswer<ShownKits, KitsOnDevice>(
    {
      ...addressQuestion('/v1/kits', query),
      isAnswer: (body) => v.is(kitsAnswerSchema, body),
      compute: ({ computeKits }) => computeKits(query),
    },
    source,
    signal,
  );
}
