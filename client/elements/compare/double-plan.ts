import { type Draft, editDraft, writeQuery } from '../../data/draft.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { readHostInput } from '../../data/read-host-input.ts';
import { shareCounts } from '../../data/share-counts.ts';

/** Twice as long with the same width, or twice as wide and as long. */
export type Doubling = 'long' | 'both';

/**
 * The plan of a quilt that is twice as large, of blocks of the same cut. Of a count of blocks the count is doubled, of
 * every other wish the size.
 *
 * @param query the plan as it was asked for.
 * @param answer the plan itself, for what the wish came to.
 *
 * @example
 * const answer = { wish: { width: 50, height: 60 }, grid: { columns: 5, rows: 6 }, block: { cut: 12 } };
 * doublePlan('target.size=throw', answer, 'long') // => 'block.cut=12&target.width=50&target.height=120'
 * doublePlan('target.columns=5&target.rows=6', answer, 'both') // => 'block.cut=12&target.columns=10&target.rows=12'
 */
export function doublePlan(
  query: string,
  answer: {
    readonly wish: ShownPlan['wish'];
    readonly grid: ShownPlan['grid'];
    readonly block: Pick<ShownPlan['block'], 'cut'>;
  },
  doubling: Doubling,
): string {
  const draft = shareCounts(readHostInput(query).draft);
  const across = doubling === 'both' ? 2 : 1;
  const { grid, wish } = answer;
  const isGrid = draft['target.columns'] !== undefined;
  const target: Draft = isGrid
    ? { 'target.columns': `${grid.columns * across}`, 'target.rows': `${grid.rows * 2}` }
    : {
        'target.width': `${wish.width * across}`,
        'target.height': `${wish.height * 2}`,
        ...(draft['target.at'] !== undefined && { 'target.at': draft['target.at'] }),
      };
  const cut = editDraft(draft, 'block.cut', `${answer.block.cut}`);
  return writeQuery({ ...editDraft(cut, 'target'), ...target });
}
