import { describe, expect, test } from 'vitest';
import { BLANK } from '../../../../client/elements/compare/compare-state.ts';
import { tableView } from '../../../../client/elements/compare/compare-view-table.ts';
import { compareContext, sideOf } from '../../../support/compare-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, renderFresh } from '../../../support/render.ts';

const lap = sideOf(planThrow({ target: { columns: 4, rows: 5 }, block: { cut: 10 } }));
const twice = sideOf(planThrow({ target: { columns: 4, rows: 10 }, block: { cut: 10 } }));

function readRows(root: HTMLElement): Record<string, string> {
  const rows = [...root.querySelectorAll('tbody tr')].map((row) => {
    const [name = '', ...cells] = [...row.children].map((cell) =>
      (cell.textContent ?? '').replace(/\s+/g, ' ').trim(),
    );
    return [name, cells.join(' | ')];
  });
  return Object.fromEntries(rows);
}

describe('tableView', () => {
  test('tells each figure of both and how the second differs', () => {
    const rows = readRows(renderFresh(tableView(compareContext({ a: lap, b: twice }).context)));
    expect(rows['Blocks']).toBe('20 | 40 20 more');
    expect(rows['Cut of a block']).toBe('10 in | 10 in the same');
    expect(rows['Width, washed']).toMatch(/the same$/);
    expect(rows['Length, washed']).toMatch(/in \| .* in 3\d.* in more$/);
    expect(rows['Cloth in all']).toMatch(/yd more$/);
    expect(Object.keys(rows)).not.toContain('Cost of the cloth');
    const back = readRows(renderFresh(tableView(compareContext({ a: twice, b: lap }).context)));
    expect(back['Blocks']).toBe('40 | 20 20 less');
  });

  test('with one plan leaves the other column empty and tells no difference', () => {
    const root = renderFresh(tableView(compareContext({ a: lap, b: BLANK }).context));
    expect(readRows(root)['Blocks']).toBe('20 | –');
    expect(find(root, 'table').getAttribute('aria-label')).toBe('Figures of both plans');
  });
});
