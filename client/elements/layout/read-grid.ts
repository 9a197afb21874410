import { letterOf } from '#core/layout/letter-of.ts';
import { listTouching } from '#core/layout/list-touching.ts';
import { isRearranged } from '../../data/hand-grid.ts';
import type { ShownLayout } from '../../data/is-layout-answer.ts';
import { type LayoutDraft, readPins } from '../../data/layout-draft.ts';
import { readRows } from '../../data/rows.ts';
import type { ShownGrid } from './layout-context.ts';

/** What the grid on the table follows from. */
export interface GridSources {
  readonly answer: ShownLayout;
  readonly draft: LayoutDraft;
  /** The grid as it was laid by hand; passed over where it is none of the same blocks. */
  readonly hand: readonly string[] | undefined;
}

/**
 * The grid on the table.
 *
 * @param before the one that was there: what has not changed is taken over from it, so that nothing is drawn anew in
 *   vain.
 */
export function readGrid(
  { answer, draft, hand }: GridSources,
  before: ShownGrid | undefined,
): ShownGrid {
  const cells = fitHand(hand, answer) ?? answer.cells;
  const isSame = before?.cells === cells;
  const rows = readRows(draft, 'prints');
  const names = answer.input.prints.map(({ id }, at) => rows[at]?.['id'] || id || letterOf(at));
  const pins = readPins(draft);
  const colors = answer.input.prints.map(({ color }) => color ?? '');
  const key = [...names, ...colors].join('\n');
  const isPinnedAlike = before?.pins.join() === pins.join();
  if (isSame && isPinnedAlike && before.key === key) return before;
  return {
    key,
    cells,
    meetings: isSame ? before.meetings : listTouching(cells),
    pins,
    names,
    colorOf: (print) => colors[print] || undefined,
  };
}

/** The grid as it was laid by hand, where it is one of the very blocks of the answer; else nothing. */
export function fitHand(
  hand: readonly string[] | undefined,
  answer: Pick<ShownLayout, 'cells'> | undefined,
): readonly string[] | undefined {
  return hand && answer && isRearranged(hand, answer.cells) ? hand : undefined;
}
