import { html, type TemplateResult } from 'lit';
import { letterOf } from '#core/layout/letter-of.ts';
import { editDraft } from '../../data/draft.ts';
import { type LayoutDraft, readPins } from '../../data/layout-draft.ts';
import { readRows } from '../../data/rows.ts';
import { type LayoutContext, tellAt } from './layout-context.ts';
import { shareDifference } from './share-difference.ts';

/** What is wrong with the prints together: by how much their counts miss the grid, and a press that mends it. */
export function missingView(context: LayoutContext): TemplateResult | '' {
  const { words, act, status } = context;
  const { layout } = words;
  const fault = tellAt(context, 'prints');
  if (fault === undefined) return '';
  const missing = findMissing(status.draft);
  const shared = missing === 0 ? undefined : shareDraft(context);
  const said = missing > 0 ? layout.short(missing) : layout.over(-missing);
  return html`<p class="fault" role="alert">${missing === 0 ? fault : said}</p>
    ${shared && html`<div class="chips"><button @click=${() => act.choose(shared)}>${layout.share}</button></div>`}`;
}

function readCounts(draft: LayoutDraft): readonly number[] {
  return readRows(draft, 'prints').map(({ count }) => Number(count || Number.NaN));
}

function countBlocks({ columns = '', rows = '' }: LayoutDraft): number {
  return Number(columns) * Number(rows);
}

/** Blocks of the grid without a print; below 0 where there are too many, and 0 too where a count is not one. */
function findMissing(draft: LayoutDraft): number {
  const counts = readCounts(draft);
  const missing = counts.reduce((rest, count) => rest - count, countBlocks(draft));
  const isWhole = counts.every((count) => Number.isInteger(count) && count >= 0);
  return isWhole && Number.isInteger(missing) ? missing : 0;
}

/**
 * The counts that the last answer had too give and take, those that were changed since stay; where that does not do,
 * all give and take. What the page has set stays.
 */
function shareDraft({ status, isLocked }: LayoutContext): LayoutDraft | undefined {
  const { draft, answer } = status;
  const counts = readCounts(draft);
  const pinned = readPins(draft).join('');
  const least = counts.map((_, at) => pinned.split(letterOf(at)).length - 1);
  const mayChange = (at: number) => !isLocked(`prints.${at}.count`);
  const isOld = (at: number) =>
    answer === undefined || answer.input.prints[at]?.count === counts[at];
  const frame = { counts, least, blocks: countBlocks(draft) };
  const shared =
    shareDifference({ ...frame, isFree: (at) => mayChange(at) && isOld(at) }) ??
    shareDifference({ ...frame, isFree: mayChange });
  return shared?.reduce<LayoutDraft>(
    (next, count, at) => editDraft(next, `prints.${at}.count`, `${count}`),
    draft,
  );
}
