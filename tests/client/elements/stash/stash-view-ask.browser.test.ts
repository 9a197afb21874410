import { describe, expect, test, vi } from 'vitest';
import { tableView, wishView } from '../../../../client/elements/stash/stash-view-ask.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';
import { stashContext } from '../../../support/stock.ts';

describe('tableView', () => {
  test('says that cloth is invented while some of it is', () => {
    const mine = { draft: { 'pieces.0.id': 'Mine' } } as const;
    expect(renderFresh(tableView(stashContext())).querySelector('.invented')).not.toBeNull();
    expect(renderFresh(tableView(stashContext(mine))).querySelector('.invented')).toBeNull();
  });

  test('shows each print in the look that it has in the quilt, and no look of a backing', () => {
    const swatches = renderFresh(tableView(stashContext())).querySelectorAll('td.id svg');
    expect([...swatches].map((svg) => svg.textContent?.trim())).toEqual([
      'A',
      'B',
      'C',
      'D',
      '',
      '',
    ]);
  });

  test('has a column for prints where it is wanted', () => {
    const root = renderFresh(tableView(stashContext({ hasPrints: true })));
    expect(root.querySelector('#cell-0-print')).not.toBeNull();
    expect(renderFresh(tableView(stashContext())).querySelector('#cell-0-print')).toBeNull();
  });

  test('tells what was done to the whole table, and why a file was refused', () => {
    const done = { kind: 'pasted', rows: 2, before: {} } as const;
    const undo = vi.fn();
    const root = renderFresh(tableView(stashContext({ done }, { undo })));
    expect(readText(root, '.notice')).toContain('2 rows pasted.');
    find(root, '.notice button').click();
    expect(undo).toHaveBeenCalledOnce();
    const refused = { fileFault: { code: 'no-column', column: 'width' } } as const;
    const said = readText(renderFresh(tableView(stashContext(refused))), '[role=alert]');
    expect(said).toContain('no column “width”');
    expect(said).toContain('What you typed stays as it is.');
  });

  test('hands over the file that was chosen', () => {
    const open = vi.fn();
    const root = renderFresh(tableView(stashContext({}, { open })));
    const input = find<HTMLInputElement>(root, 'input[type=file]');
    const files = new DataTransfer();
    files.items.add(new File(['name'], 'a.csv'));
    input.files = files.files;
    input.dispatchEvent(new Event('change'));
    expect(open.mock.calls[0]?.[0].name).toBe('a.csv');
  });
});

describe('wishView', () => {
  test('says of like prints what the draft says', () => {
    const root = renderFresh(wishView(stashContext({ draft: { touch: 'corners' } })));
    const chosen = [...root.querySelectorAll<HTMLInputElement>('[name=touch]')];
    expect(chosen.map(({ checked }) => checked)).toEqual([false, false, true]);
  });

  test('chooses a shape, and lets go of the one before', () => {
    const replace = vi.fn();
    const draft = { 'shape.target.size': 'lap', unit: 'in' };
    const root = renderFresh(wishView(stashContext({ draft }, { replace })));
    const list = find<HTMLSelectElement>(root, '#shape');
    expect(list.selectedOptions[0]?.textContent).toBe('As the address says');
    list.selectedIndex = 1;
    list.dispatchEvent(new Event('change'));
    expect(replace).toHaveBeenCalledWith({ unit: 'in', 'shape.ratio': '1' });
  });

  test('shows what is wrong with the squares at their field', () => {
    const faults = [{ code: 'too-small', path: ['block', 'cut'], expected: '2 in' }] as const;
    const edit = vi.fn();
    const root = renderFresh(wishView(stashContext({ faults }, { edit })));
    expect(readText(root, '#block-cut-fault')).toContain('at least 2 in');
    type(root, '#block-cut', '8');
    expect(edit).toHaveBeenCalledWith('block.cut', '8');
  });
});
