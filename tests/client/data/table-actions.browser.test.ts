import { beforeEach, describe, expect, test, vi } from 'vitest';
import * as tool from '../../../client/data/csv-tool.ts';
import { makeTableActions } from '../../../client/data/table-actions.ts';

const draft = { unit: 'in', 'pieces.0.id': 'Moss', 'pieces.0.width': '44' };
const replace = vi.fn();
const refuse = vi.fn();
const actions = makeTableActions<Record<string, string>>({
  list: 'pieces',
  columns: [
    { name: 'id', head: 'name', isNeeded: true },
    { name: 'width', head: 'width', measure: 'length' },
  ],
  most: 3,
  file: 'a.csv',
  loadCsv: async () => tool,
  read: () => draft,
  names: () => ['id', 'width'],
  replace,
  refuse,
  sayIn: (now, unit) => ({ ...now, unit }),
});

describe('makeTableActions', () => {
  beforeEach(() => {
    replace.mockClear();
    refuse.mockClear();
  });

  test('paste hands over the table with the cells in it', async () => {
    await actions.paste({ row: 1, name: 'id' }, 'Rust\t40');
    const pasted = { ...draft, 'pieces.1.role': 'top', 'pieces.1.id': 'Rust' };
    expect(replace).toHaveBeenCalledWith('pasted', { ...pasted, 'pieces.1.width': '40' }, 1);
  });

  test('open hands over the rows of the file, in the unit of the file', async () => {
    await actions.open(new Blob(['name,width (cm)\nOat,110\n']));
    const opened = { unit: 'cm', 'pieces.0.role': 'top', 'pieces.0.id': 'Oat' };
    expect(replace).toHaveBeenCalledWith('opened', { ...opened, 'pieces.0.width': '110' }, 1);
  });

  test('what is refused replaces nothing', async () => {
    await actions.open(new Blob(['width\n44\n']));
    await actions.paste({ row: 2, name: 'id' }, 'a\nb');
    expect(replace).not.toHaveBeenCalled();
    expect(refuse.mock.calls.map(([{ code }]) => code)).toEqual(['no-column', 'too-many-rows']);
  });

  test('clear leaves all but the rows', () => {
    actions.clear();
    expect(replace).toHaveBeenCalledWith('cleared', { unit: 'in' }, 0);
  });

  test('save writes the unit into the head', async () => {
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => {});
    const make = vi.spyOn(URL, 'createObjectURL');
    await actions.save();
    const [blob] = make.mock.calls[0] ?? [];
    expect(blob instanceof Blob && (await blob.text())).toBe('name,width (in)\r\nMoss,44\r\n');
    vi.restoreAllMocks();
  });
});
