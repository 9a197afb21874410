import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCells, writeCells } from '../../../client/data/csv-tool.ts';

/** Cells of a table: a row that is all empty is passed over, and none has spaces about it. */
const cell = fc.string({ unit: 'grapheme', maxLength: 12 });
const table = fc
  .array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 8 })
  .filter((rows) => rows.every((row) => row.some((text) => text.trim() !== '')));

describe('readCells and writeCells', () => {
  test('readCells(writeCells(cells)) are the cells, formulas, quotes, line ends and all', () => {
    const hard = fc.oneof(
      cell,
      fc.constantFrom(
        '=1+1',
        '+2',
        '-3',
        '@x',
        "'=1",
        "''@",
        '8 1/2"',
        'a,b',
        'a\r\nb',
        '\tq',
        '"',
      ),
    );
    const rows = fc
      .array(fc.array(hard, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 8 })
      .filter((all) => all.every((row) => row.some((text) => text.trim() !== '')));
    fc.assert(
      fc.property(rows, (cells) => {
        const read = readCells(writeCells(cells), { most: 100, delimiter: ',' });
        expect(read).toEqual({ ok: true, cells });
      }),
    );
  });

  test('writeCells writes no cell that a spreadsheet takes for a formula', () => {
    // OWASP, “CSV Injection”: cells beginning with = + - @, tab or carriage return.
    fc.assert(
      fc.property(table, (cells) => {
        const written = writeCells(cells.map((row) => row.map((text) => `=${text}`)));
        const plain = readCells(written.replaceAll("'", '~'), { most: 100, delimiter: ',' });
        expect(plain.ok && plain.cells.flat().every((text) => !/^[=+\-@\t\r]/.test(text))).toBe(
          true,
        );
      }),
    );
  });

  test('writeCells ends lines and doubles quotes as RFC 4180 has it', () => {
    expect(
      writeCells([
        ['a', '8 1/2"'],
        ['b,c', ''],
      ]),
    ).toBe('a,"8 1/2"""\r\n"b,c",\r\n');
  });
});

describe('readCells', () => {
  test.each([
    [
      'a;b\n1;"2,5"',
      [
        ['a', 'b'],
        ['1', '2,5'],
      ],
    ],
    [
      'a\tb\n1\t2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      '\uFEFFa,b\r\n\r\n1,2\r\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
  ])('readCells(%j) are %j', (text, cells) => {
    expect(readCells(text, { most: 10 })).toEqual({ ok: true, cells });
  });

  test.each([
    ['a,b\n1,2\n"3,4\n5,6\n', 3],
    ['a,b\n"1"x,2\n', 2],
  ])('readCells(%j) names row %i, where a quote is astray', (text, row) => {
    expect(readCells(text, { most: 10 })).toEqual({ ok: false, row });
  });

  test('readCells reads no further than it must', () => {
    const read = readCells('1,2\n'.repeat(200_000), { most: 5 });
    expect(read.ok && read.cells.length).toBe(5);
  });
});
