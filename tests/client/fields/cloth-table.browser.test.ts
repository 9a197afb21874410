import { html } from 'lit';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type ClothTable, clothTable } from '../../../client/fields/cloth-table.ts';
import { find, readText, renderFresh, type } from '../../support/render.ts';

const onType = vi.fn();
const onDrop = vi.fn();
const onPaste = vi.fn();
const TABLE: ClothTable = {
  caption: 'What you have',
  columns: [
    { name: 'id', label: 'Name', isText: true },
    {
      name: 'role',
      label: 'For',
      choices: [
        ['top', 'Top'],
        ['backing', 'Backing'],
      ],
    },
    { name: 'width', label: 'Width', unit: 'in' },
    { name: 'count', label: 'Pieces', usual: '1' },
  ],
  rows: [
    { id: 'Moss', role: 'top', width: '44' },
    { id: 'Fog', role: 'hem', width: 'wide' },
  ],
  most: 3,
  swatch: (row) => html`<i class="swatch-${row}"></i>`,
  faultAt: ({ row, name }) => (row === 1 && name === 'width' ? 'That is no length.' : undefined),
  words: {
    cell: (row, column) => `Row ${row}, ${column.toLowerCase()}`,
    remove: (name) => `Take ${name} away`,
    row: (row) => `row ${row}`,
  },
  ...{ onType, onDrop, onPaste },
};
const show = (change: Partial<ClothTable> = {}) => renderFresh(clothTable({ ...TABLE, ...change }));
const press = (root: ParentNode, selector: string, key: string) => {
  const target = find(root, selector);
  target.focus();
  target.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  return (document.activeElement as HTMLElement).dataset['cell'];
};

describe('clothTable', () => {
  beforeEach(() => {
    for (const mock of [onType, onDrop, onPaste]) mock.mockClear();
  });

  test('has an empty row at its foot until it is full', () => {
    expect(show().querySelectorAll('tbody tr')).toHaveLength(3);
    expect(show({ most: 2 }).querySelectorAll('tbody tr')).toHaveLength(2);
    expect(show().querySelectorAll('tbody button')).toHaveLength(2);
  });

  test('shows what was typed, and what holds where nothing was', () => {
    const root = show();
    expect(find<HTMLInputElement>(root, '#cell-1-width').value).toBe('wide');
    expect(find<HTMLInputElement>(root, '#cell-0-count').placeholder).toBe('1');
    expect(find<HTMLInputElement>(root, '#cell-0-width').inputMode).toBe('decimal');
  });

  test('shows a choice that is not among those there are, so that it is not lost', () => {
    const list = find<HTMLSelectElement>(show(), '#cell-1-role');
    expect(list.value).toBe('hem');
    expect(find<HTMLSelectElement>(show(), '#cell-2-role').value).toBe('top');
  });

  test('ties what is wrong to its cell, and names the column', () => {
    const root = show();
    const cell = find(root, '#cell-1-width');
    expect(cell.getAttribute('aria-invalid')).toBe('true');
    const said = readText(root, `#${cell.getAttribute('aria-describedby')}`);
    expect(said).toBe('Width: That is no length.');
    expect(find(root, '#cell-0-width').hasAttribute('aria-invalid')).toBe(false);
  });

  test('names each cell by its row and column, and each button by its row', () => {
    const root = show();
    expect(find(root, '#cell-2-width').getAttribute('aria-label')).toBe('Row 3, width');
    expect(find(root, 'tbody button').getAttribute('aria-label')).toBe('Take Moss away');
  });

  test('tells what is typed, chosen and taken away', () => {
    const root = show();
    type(root, '#cell-2-id', 'Oat');
    const list = find<HTMLSelectElement>(root, '#cell-0-role');
    list.value = 'backing';
    list.dispatchEvent(new Event('change', { bubbles: true }));
    find(root, 'tbody button').click();
    expect(onType.mock.calls).toEqual([
      [{ row: 2, name: 'id' }, 'Oat'],
      [{ row: 0, name: 'role' }, 'backing'],
    ]);
    expect(onDrop).toHaveBeenCalledWith(0);
  });

  test('goes up and down its columns by Enter and arrows, and no further than its end', () => {
    const root = show();
    expect(press(root, '#cell-0-width', 'Enter')).toBe('1.width');
    expect(press(root, '#cell-1-width', 'ArrowDown')).toBe('2.width');
    expect(press(root, '#cell-2-width', 'ArrowDown')).toBe('2.width');
    expect(press(root, '#cell-1-width', 'ArrowUp')).toBe('0.width');
    expect(press(root, '#cell-1-role', 'ArrowDown')).toBe('1.role');
  });

  test.each([
    ['a\tb', true],
    ['a\nb\n', true],
    ['a\n', false],
    ['a b', false],
  ])('takes %j as a block of cells: %j', (text, isBlock) => {
    const root = show();
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    const options = { clipboardData, bubbles: true, cancelable: true };
    const event = new ClipboardEvent('paste', options);
    find(root, '#cell-0-id').dispatchEvent(event);
    expect(onPaste.mock.calls).toEqual(isBlock ? [[{ row: 0, name: 'id' }, text]] : []);
    expect(event.defaultPrevented).toBe(isBlock);
  });
});
