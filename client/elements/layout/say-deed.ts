import { nameRow } from '#core/layout/name-row.ts';
import type { LayoutWords } from '../../text/layout/source.ts';
import type { Deed } from './layout-state.ts';

/**
 * What was just done to the grid, in a sentence, and how much touches since.
 *
 * @param columns blocks across.
 * @param pairs of blocks that touch under the rule that was chosen.
 */
export function sayDeed(
  words: LayoutWords,
  deed: Deed,
  { columns, pairs }: { readonly columns: number; readonly pairs: number },
): string {
  const name = (place: number) => `${nameRow(Math.floor(place / columns))}${(place % columns) + 1}`;
  if (deed.kind === 'swapped') {
    return `${words.swapped(name(deed.place), name(deed.other))} ${words.pairs(pairs)}`;
  }
  const sentences = {
    taken: words.taken,
    'let-go': words.letGo,
    pinned: words.pinnedNow,
    unpinned: words.unpinnedNow,
    stuck: words.stuck,
  };
  return sentences[deed.kind](name(deed.place));
}
