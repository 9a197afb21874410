import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCells, writeCells } from '../../../client/data/csv-tool.ts';
import { type Column, readTable, writeTable } from '../../../client/data/table-file.ts';

const tool = { readCells, writeCells };
const COLUMNS: readonly Column[] = [
  { name: 'role', head: 'role', isNeeded: true },
  { name: 'id', head: 'name', isNeeded: true },
  { name: 'width', head: 'width', isNeeded: true, measure: 'length' },
  { name: 'cost', head: 'cost', measure: 'money' },
];
const read = (text: string, most = 5) => readTable(text, COLUMNS, { tool, most });
const text = fc.string({ maxLength: 10 }).map((typed) => typed.trim());

describe('readTable and writeTable', () => {
  test('readTable(writeTable(rows)) are the rows and what they are measured in', () => {
    const row = fc.record({ role: fc.constantFrom('top', 'backing'), id: text, cost: text });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        const measures = { unit: 'cm', currency: 'JPY' } as const;
        const written = writeTable(rows, COLUMNS, { ...measures, tool });
        const typed = rows.map((one) =>
          Object.fromEntries(Object.entries(one).filter(([, said]) => said !== '')),
        );
        expect(read(written)).toEqual({ ok: true, rows: typed, ...measures });
      }),
    );
  });
});

describe('readTable', () => {
  test('takes columns in any order by their heads, and passes over what is in none of ours', () => {
    expect(read('Shelf,WIDTH (in),Name,Role\nB3,44, Moss ,TOP\n')).toEqual({
      ok: true,
      unit: 'in',
      rows: [{ role: 'top', id: 'Moss', width: '44' }],
    });
  });

  test.each([
    ['', { code: 'empty-file' }],
    ['role,name,width\n', { code: 'empty-file' }],
    ['role,width\ntop,44\n', { code: 'no-column', row: 1, column: 'name' }],
    ['role,name,width\ntop,"Moss,44\n', { code: 'stray-quote', row: 2 }],
    [`role,name,width\n${'top,Moss,44\n'.repeat(6)}`, { code: 'too-many-rows', row: 7, most: 5 }],
  ])('refuses %j', (given, fault) => {
    expect(read(given)).toEqual({ ok: false, fault });
  });
});
