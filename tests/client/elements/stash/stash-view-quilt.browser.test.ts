import { describe, expect, test, vi } from 'vitest';
import { nameOption } from '../../../../client/elements/stash/stash-state.ts';
import { othersView, quiltView } from '../../../../client/elements/stash/stash-view-quilt.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';
import { answerStash, stashContext, together } from '../../../support/stock.ts';

const [first, second] = answerStash().options;

describe('quiltView', () => {
  const show = () => renderFresh(quiltView(stashContext(), first));

  test('says the figures of the quilt and draws it', () => {
    const root = show();
    expect(readText(root, '.figures')).toContain(`${first?.columns} × ${first?.rows}`);
    expect(find(root, '.picture').getAttribute('aria-label')).toMatch(/^The quilt to scale: /);
  });

  test('leads to a plan of the same blocks in the same prints', () => {
    const { searchParams } = new URL(find<HTMLAnchorElement>(show(), 'a').href);
    expect(searchParams.get('target.columns')).toBe(`${first?.columns}`);
    const counts = [...searchParams].filter(([name]) => name.endsWith('.count'));
    const blocks = counts.reduce((sum, [, count]) => sum + Number(count), 0);
    expect(blocks).toBe(first?.blocks);
  });

  test('says what to do where there is no quilt', () => {
    const none = (state: Parameters<typeof stashContext>[0]) =>
      readText(renderFresh(quiltView(stashContext(state), undefined)), '.waiting');
    expect(none({ answer: undefined })).toContain('Type a piece of print');
    expect(none({ answer: { ...answerStash(), options: [] } })).toContain('give no quilt');
  });
});

describe('othersView', () => {
  test('has a button for each quilt, and tells which was chosen', () => {
    const choose = vi.fn();
    const root = renderFresh(together(othersView(stashContext({}, { choose }))));
    const buttons = [...root.querySelectorAll('button')];
    expect(buttons).toHaveLength(answerStash().options.length);
    expect(buttons[0]?.getAttribute('aria-pressed')).toBe('true');
    buttons[1]?.click();
    expect(choose).toHaveBeenCalledWith(second && nameOption(second));
  });

  test('is not there where there is one quilt only', () => {
    const answer = { ...answerStash(), options: answerStash().options.slice(0, 1) };
    expect(renderFresh(together(othersView(stashContext({ answer })))).textContent?.trim()).toBe(
      '',
    );
  });
});
