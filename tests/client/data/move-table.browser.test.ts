import { describe, expect, test, vi } from 'vitest';
import * as tool from '../../../client/data/csv-tool.ts';
import { openTable, pasteTable, saveTable } from '../../../client/data/move-table.ts';

const loadCsv = async () => tool;
const noCsv = () => Promise.reject(new Error('offline'));
const columns = [{ name: 'id', head: 'name', isNeeded: true }];
const names = ['id', 'width'];
const cell = { list: 'pieces', row: 0, name: 'id', names };

describe('openTable', () => {
  test('reads a file', async () => {
    const file = new Blob(['name\nMoss\n']);
    expect(await openTable(file, { columns, most: 5, loadCsv })).toEqual({
      ok: true,
      rows: [{ role: 'top', id: 'Moss' }],
    });
  });

  test('refuses a file without end after its first megabyte', async () => {
    const file = new Blob(['name\n', 'Moss\n'.repeat(2_000_000)]);
    const read = await openTable(file, { columns, most: 5, loadCsv });
    expect(read).toMatchObject({ ok: false, fault: { code: 'too-many-rows', row: 7 } });
  });

  test('says so where there is nothing to read it with', async () => {
    const read = await openTable(new Blob(['name\nMoss']), { columns, most: 5, loadCsv: noCsv });
    expect(read).toEqual({ ok: false, fault: { code: 'unreadable' } });
  });
});

describe('saveTable', () => {
  test('hands the browser a file of the rows that are not empty', async () => {
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => {});
    const make = vi.spyOn(URL, 'createObjectURL');
    const rows = [{ role: 'top', id: 'Moss' }, { role: 'top' }];
    expect(await saveTable('a.csv', { rows, columns, unit: 'in' }, loadCsv)).toBe(true);
    const [blob] = make.mock.calls[0] ?? [];
    expect(blob instanceof Blob && (await blob.text())).toBe('name\r\nMoss\r\n');
    expect(click).toHaveBeenCalledOnce();
    vi.restoreAllMocks();
  });

  test('says so where there is nothing to write it with', async () => {
    expect(await saveTable('a.csv', { rows: [], columns, unit: 'in' }, noCsv)).toBe(false);
  });
});

describe('pasteTable', () => {
  const paste = (text: string, load: () => Promise<typeof tool> = loadCsv) =>
    pasteTable({ draft: {}, cell, text }, 3, load);

  test.each([
    ['Moss\t44\nRust\t8 1/2"\n', { 'pieces.1.width': '8 1/2"' }],
    ['"Moss\nand fern"\t44', { 'pieces.0.id': 'Moss\nand fern', 'pieces.0.width': '44' }],
    ['"\t44\nb', { 'pieces.0.id': '"', 'pieces.0.width': '44', 'pieces.1.id': 'b' }],
  ])('lays %j', async (text, cells) => {
    expect(await paste(text)).toMatchObject({ ok: true, draft: cells });
  });

  test('lays what it can where the tool is not to be had', async () => {
    const pasted = await paste('Moss\t44\r\nRust\t40\r\n', noCsv);
    expect(pasted).toMatchObject({ ok: true, rows: 2, draft: { 'pieces.1.width': '40' } });
  });

  test('refuses more rows than there is room for', async () => {
    expect(await paste('a\nb\nc\nd')).toEqual({
      ok: false,
      fault: { code: 'too-many-rows', row: 4, most: 3 },
    });
  });
});
