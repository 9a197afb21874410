import { type Draft, editDraft } from '../../data/draft.ts';
import { findBlank } from '../../data/find-blank.ts';
import { isSizeAnswer, type ShownSize } from '../../data/is-size-answer.ts';
import { loadAnswer } from '../../data/load-answer.ts';
import { REQUEST_KEYS } from '../../data/names.ts';
import type { OnDevice } from '../../data/on-device.ts';
import type { Errand } from '../../host/errand.ts';

/** A quilt of the size that is wished for, asked of `/v1/plan`. */
export const sizeErrand: Errand<Draft, ShownSize, Pick<OnDevice, 'computePlan'>> = {
  name: 'ragbloom-size',
  keys: REQUEST_KEYS,
  complete: (draft) =>
    Object.keys(draft).some((path) => path.startsWith('target.'))
      ? draft
      : editDraft(draft, 'target.size', 'throw'),
  findBlank,
  load: (query, source, signal) =>
    loadAnswer<ShownSize, Pick<OnDevice, 'computePlan'>>(
      {
        address: `/v1/plan?${query}`,
        isAnswer: isSizeAnswer,
        compute: ({ computePlan }) => computePlan(query),
      },
      source,
      signal,
    ),
};
