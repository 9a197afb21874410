import { describe, expect, test } from 'vitest';
import { cuttingView, groundsView } from '../../../../client/elements/stash/stash-view-sheets.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { answerStash, stashContext } from '../../../support/stock.ts';

const answer = answerStash();
const [first] = answer.options;
if (first === undefined) throw new Error('There is no quilt.');

describe('cuttingView', () => {
  test('has a row for each piece: its squares and what it leaves', () => {
    const root = renderFresh(cuttingView(stashContext(), first));
    const rows = [...root.querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(answer.input.pieces.length);
    const cut = rows.map((row) => Number(row.querySelector('b')?.textContent));
    expect(cut.reduce((sum, squares) => sum + squares, 0)).toBe(2 * first.blocks);
  });

  test('draws each piece that is cut, those alike once', () => {
    const figures = renderFresh(cuttingView(stashContext(), first)).querySelectorAll('figure');
    expect(figures.length).toBeGreaterThanOrEqual(first.uses.length);
    expect(figures[0]?.querySelector('svg')?.getAttribute('aria-label')).toContain(
      'strip by strip',
    );
  });

  test('says what is to be bought where there is no piece of a layer', () => {
    const option = { ...first, buy: [{ role: 'backing', blocks: 30 }] } as const;
    const root = renderFresh(cuttingView(stashContext(), option));
    expect(readText(root, 'p:has(b)')).toMatch(/^Buy cloth for 30 squares of backing, .* each\.$/);
  });
});

test('groundsView has every caution and every assumption', () => {
  const root = renderFresh(groundsView(stashContext()));
  const { cautions, assumptions } = answer;
  expect(root.querySelectorAll('li')).toHaveLength(cautions.length + assumptions.length);
});
