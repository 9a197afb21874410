import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dropRow,
  isBlankRow,
  layCells,
  packRows,
  placeFault,
  readRows,
  typeInRow,
  writeRows,
} from '../../../client/data/rows.ts';

const names = ['id', 'role', 'width'];
const row = fc.record({ role: fc.constant('top'), id: fc.string(), width: fc.string() });
const rows = fc.array(row, { maxLength: 12 });

describe('readRows and writeRows', () => {
  test('readRows(writeRows(draft, list, rows)) are the rows, and the rest of the draft stays', () => {
    fc.assert(
      fc.property(rows, (some) => {
        const draft = writeRows({ unit: 'cm', 'pieces.7.id': 'old' }, 'pieces', some);
        expect(readRows(draft, 'pieces')).toEqual(some);
        expect(draft['unit']).toBe('cm');
      }),
    );
  });

  test('readRows passes over what is no row', () => {
    expect(readRows({ 'pieces.x.id': 'a', 'piecesX.0.id': 'b', pieces: 'c' }, 'pieces')).toEqual(
      [],
    );
  });
});

describe('typeInRow', () => {
  test('typeInRow takes for a new row the role of the one above it', () => {
    const draft = { 'pieces.0.role': 'backing', 'pieces.0.id': 'Fog' };
    const typed = typeInRow(draft, { list: 'pieces', row: 1, name: 'width' }, '42');
    expect(readRows(typed, 'pieces')[1]).toEqual({ role: 'backing', width: '42' });
  });

  test('typeInRow of an empty table begins with the top', () => {
    expect(typeInRow({}, { list: 'pieces', row: 0, name: 'id' }, 'Moss')).toEqual({
      'pieces.0.role': 'top',
      'pieces.0.id': 'Moss',
    });
  });
});

describe('dropRow', () => {
  test('dropRow takes one row out and moves the others up', () => {
    const draft = writeRows({}, 'pieces', [{ id: 'a' }, { id: 'b' }, { id: 'c' }]);
    expect(readRows(dropRow(draft, 'pieces', 1), 'pieces')).toEqual([{ id: 'a' }, { id: 'c' }]);
  });
});

describe('layCells', () => {
  test('layCells lays a block from a cell on, growing rows and leaving off what is beyond', () => {
    const cell = { list: 'pieces', row: 1, name: 'role', names };
    const laid = layCells({ 'pieces.0.id': 'a' }, cell, [
      [' Top ', '44', 'beyond'],
      ['BACKING', '42'],
    ]);
    expect(readRows(laid, 'pieces')).toEqual([
      { id: 'a' },
      { role: 'top', width: '44' },
      { role: 'backing', width: '42' },
    ]);
  });
});

describe('packRows and placeFault', () => {
  test('packRows leaves out empty rows, and placeFault finds the way back to each of the others', () => {
    fc.assert(
      fc.property(rows, (some) => {
        const { draft, places } = packRows(writeRows({}, 'pieces', some), 'pieces');
        const packed = readRows(draft, 'pieces');
        expect(packed).toHaveLength(some.filter((one) => !isBlankRow(one)).length);
        for (const [at, one] of packed.entries()) {
          const path = ['pieces', at, 'id'];
          const placed = placeFault({ code: 'empty', path }, 'pieces', places).path;
          expect(some[Number(placed[1])]?.id.trim()).toBe((one['id'] ?? '').trim());
        }
      }),
    );
  });

  test('placeFault leaves faults of other places alone', () => {
    const fault = { code: 'empty', path: ['block', 'cut'] } as const;
    expect(placeFault(fault, 'pieces', [3])).toBe(fault);
  });
});
