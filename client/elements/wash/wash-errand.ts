import type { AnyDraft } from '../../data/draft.ts';
import { loadWash } from '../../data/load-wash.ts';
import { WASH_KEYS } from '../../data/names.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import type { WashOnDevice } from '../../data/wash-on-device.ts';
import type { Errand } from '../../host/errand.ts';
import { exampleSwatches } from './example-swatches.ts';
import { hasNoField, splitDraft, writeAsked, writeTyped } from './wash-state.ts';

/** What the wash does, asked of `/v1/wash-shrinkage`. Its draft is all that was typed, half pairs and all. */
export const washErrand: Errand<AnyDraft, ShownWash, WashOnDevice> = {
  name: 'ragbloom-wash',
  keys: WASH_KEYS,
  complete: completeWash,
  findBlank: (draft) => writeAsked(splitDraft(draft)).blanks,
  isMendable: (fault) => !hasNoField(fault),
  load: loadWash,
};

/** Where there is neither a swatch nor a size, the swatches of the invented shop. */
function completeWash(draft: AnyDraft): AnyDraft {
  const typed = splitDraft(draft);
  const isBlank = Object.keys(draft).every((path) => path === 'unit');
  const cloths = exampleSwatches(draft['unit'] === 'cm' ? 'cm' : 'in');
  return writeTyped(isBlank ? { ...typed, cloths } : typed);
}
