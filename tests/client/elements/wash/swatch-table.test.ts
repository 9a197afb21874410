import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  BLANK_CLOTH,
  BLANK_ROW,
  type Cloth,
  findCell,
  hasHalfPair,
  listPlaces,
  readCloths,
  typeCell,
  writeSwatches,
} from '../../../../client/elements/wash/swatch-table.ts';

const row = (along: string, across: string) => ({
  ...BLANK_ROW,
  'length.before': '10',
  'length.after': along,
  'width.before': '10',
  'width.after': across,
});
const FLANNEL: Cloth = {
  fabric: 'flannel',
  washes: '1',
  rows: [row('9.5', '9.75'), row('9.6', '')],
};

describe('typeCell', () => {
  test('typeCell grows a row that was not there yet', () => {
    const { rows } = typeCell(BLANK_CLOTH, { row: 0, name: 'width.after' }, '9');
    expect(rows).toEqual([{ ...BLANK_ROW, 'width.after': '9' }]);
  });

  test('typeCell changes no other cell and not the table that it was given', () => {
    const typed = typeCell(Object.freeze(FLANNEL), { row: 1, name: 'length.after' }, '9 5/8');
    expect(typed.rows).toEqual([FLANNEL.rows[0], { ...FLANNEL.rows[1], 'length.after': '9 5/8' }]);
  });
});

describe('listPlaces', () => {
  test('listPlaces leaves half pairs out, along before across', () => {
    expect(listPlaces([FLANNEL])).toEqual([
      { cloth: 0, row: 0, direction: 'length' },
      { cloth: 0, row: 1, direction: 'length' },
      { cloth: 0, row: 0, direction: 'width' },
    ]);
    expect(hasHalfPair([FLANNEL])).toBe(true);
    expect(hasHalfPair([{ ...FLANNEL, rows: [row('9', '9')] }])).toBe(false);
  });
});

describe('writeSwatches and readCloths', () => {
  test('writeSwatches sends the diagonals of a square once, with its first pair', () => {
    const skewed = { ...row('9.5', '9.75'), ac: '14', bd: '13.5' };
    const cloths = [{ ...FLANNEL, rows: [skewed] }];
    const draft = writeSwatches(cloths, listPlaces(cloths));
    expect(draft['swatches.0.diagonals.ac']).toBe('14');
    expect(draft['swatches.1.diagonals.ac']).toBeUndefined();
    const across = [{ ...FLANNEL, rows: [{ ...skewed, 'length.after': '' }] }];
    expect(writeSwatches(across, listPlaces(across))['swatches.0.diagonals.bd']).toBe('13.5');
  });

  test('readCloths(writeSwatches(table)) is the table, where every pair is whole', () => {
    const typed = fc.stringMatching(/^[1-9]\d?( 1\/[248])?$/);
    const rows = fc.array(fc.tuple(typed, typed), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, rows, (one, other) => {
        const table = [one, other].map((pairs, index) => ({
          fabric: ['flannel', 'Rose'][index] ?? '',
          washes: '1',
          rows: pairs.map(([along, across]) => row(along, across)),
        }));
        expect(readCloths(writeSwatches(table, listPlaces(table)))).toEqual(table);
      }),
    );
  });

  test('readCloths keeps counts of washes apart, and takes what has no name for cloth', () => {
    const cloths = readCloths({
      'swatches.0.direction': 'width',
      'swatches.0.before': '10',
      'swatches.1.direction': 'width',
      'swatches.1.before': '10',
      'swatches.1.washes': '3',
    });
    expect(cloths.map(({ fabric, washes }) => [fabric, washes])).toEqual([
      ['cloth', '1'],
      ['cloth', '3'],
    ]);
  });
});

describe('findCell', () => {
  test('findCell finds the cell of a fault, and none for what is no swatch', () => {
    const places = listPlaces([FLANNEL]);
    expect(findCell(['swatches', '2', 'after'], places)).toEqual({
      cloth: 0,
      row: 0,
      name: 'width.after',
    });
    expect(findCell(['swatches', 1, 'diagonals', 'bd'], places)?.name).toBe('bd');
    expect(findCell(['swatches', 1, 'washes'], places)?.name).toBe('washes');
    expect(findCell(['sewn', 'width'], places)).toBeUndefined();
    expect(findCell(['swatches', '9', 'after'], places)).toBeUndefined();
  });
});
