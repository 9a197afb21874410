import { addressQuestion } from '../../data/address-question.ts';
import { findBlank } from '../../data/find-blank.ts';
import { isLayoutAnswer, type ShownLayout } from '../../data/is-layout-answer.ts';
import { completeLayout, type LayoutDraft } from '../../data/layout-draft.ts';
import type { LayoutOnDevice } from '../../data/layout-on-device.ts';
import { loadAnswer } from '../../data/load-answer.ts';
import type { Errand } from '../../host/errand.ts';

/** Where each print goes, asked of `/v1/layout`. */
export const layoutErrand: Errand<LayoutDraft, ShownLayout, LayoutOnDevice> = {
  name: 'ragbloom-layout',
  keys: ['columns', 'rows', 'prints', 'pattern', 'touch', 'fixed', 'seed'],
  complete: completeLayout,
  findBlank,
  load: (query, source, signal) =>
    loadAnswer<ShownLayout, LayoutOnDevice>(
      {
        ...addressQuestion('/v1/layout', query),
        isAnswer: isLayoutAnswer,
        compute: ({ computeLayout }) => computeLayout(query),
      },
      source,
      signal,
    ),
};
