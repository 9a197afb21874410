import { describe, expect, test } from 'vitest';
import type { LayoutDraft } from '../../../../client/data/layout-draft.ts';
import { missingView } from '../../../../client/elements/layout/layout-view-missing.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

/** Of a grid of six whose last answer had two of each print. */
function draw(counts: readonly string[], change: LayoutDraft = {}, locked?: string) {
  const context = layoutContext();
  const typed = counts.map((count, at) => [`prints.${at}.count`, count]);
  const draft: LayoutDraft = { ...SMALL, ...Object.fromEntries(typed), ...change };
  const faults = [{ code: 'counts-do-not-sum', path: ['prints'] }] as const;
  const status = { ...context.status, draft, faults };
  const isLocked = (path: string) => path === locked;
  const root = renderFresh(missingView({ ...context, status, isLocked }) || undefined);
  return { root, draft, act: context.act };
}

const counted = (draft: LayoutDraft, counts: readonly string[]) => ({
  ...draft,
  ...Object.fromEntries(counts.map((count, at) => [`prints.${at}.count`, count])),
});

describe('missingView', () => {
  test.each([
    [['1', '2', '2'], '1 block short.', ['1', '3', '2']],
    [['5', '2', '2'], '3 blocks too many.', ['5', '0', '1']],
    [['1', '1', '2'], '2 blocks short.', ['1', '1', '4']],
    // More than there is room for: nobody else can give it.
    [['8', '2', '2'], '6 blocks too many.', ['6', '0', '0']],
  ])('says by how much %j miss six blocks, and shares it among the others', (counts, said, to) => {
    const { root, draft, act } = draw(counts);
    expect(readText(root, '.fault')).toBe(said);
    find(root, 'button').click();
    expect(act.choose).toHaveBeenCalledWith(counted(draft, to));
  });

  test('shares nothing where a count is not whole', () => {
    expect(draw(['0.5', '9.5', '2']).root.querySelector('button')).toBeNull();
  });

  test('takes no pinned block away', () => {
    const { root, draft, act } = draw(['4', '2', '2'], { 'fixed.0': 'BB.', 'fixed.1': '...' });
    find(root, 'button').click();
    expect(act.choose).toHaveBeenCalledWith(counted(draft, ['4', '2', '0']));
  });

  test('leaves what the page has set', () => {
    const { root, draft, act } = draw(['3', '2', '2'], {}, 'prints.1.count');
    find(root, 'button').click();
    expect(act.choose).toHaveBeenCalledWith(counted(draft, ['3', '2', '1']));
  });

  test('of a count that is no number says what is wrong, and offers nothing', () => {
    const { root } = draw(['', '2', '2']);
    expect(readText(root, '.fault')).not.toMatch(/short|too many/);
    expect(root.querySelector('button')).toBeNull();
  });

  test('says nothing where nothing is wrong', () => {
    expect(missingView(layoutContext())).toBe('');
  });
});
