import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';

/** Any layout of few letters, free cells among them. */
const cells = fc.integer({ min: 1, max: 8 }).chain((columns) =>
  fc.array(
    fc.string({
      unit: fc.constantFrom('A', 'B', 'C', '.'),
      minLength: columns,
      maxLength: columns,
    }),
    { minLength: 1, maxLength: 8 },
  ),
);

/** Every pair of cells looked at, by distance. */
function countPairs(rows: readonly string[]): { sides: number; corners: number } {
  const all = rows.flatMap((line, row) =>
    [...line].map((print, column) => ({ print, row, column })),
  );
  const count = { sides: 0, corners: 0 };
  for (const [index, one] of all.entries()) {
    for (const other of all.slice(index + 1)) {
      if (one.print !== other.print || one.print === '.') continue;
      const down = Math.abs(one.row - other.row);
      const across = Math.abs(one.column - other.column);
      if (down + across === 1) count.sides += 1;
      if (down === 1 && across === 1) count.corners += 1;
    }
  }
  return count;
}

describe('countTouching', () => {
  test('countTouching(a chessboard of two by two) touches at both corners only', () => {
    expect(countTouching(['AB', 'BA'])).toEqual({ sides: 0, corners: 2 });
  });

  test('countTouching of one print counts every pair: 2nm - n - m and 2(n - 1)(m - 1)', () => {
    for (let columns = 1; columns <= 9; columns += 1) {
      for (let rows = 1; rows <= 9; rows += 1) {
        const all = Array.from({ length: rows }, () => 'A'.repeat(columns));
        expect(countTouching(all)).toEqual({
          sides: 2 * columns * rows - columns - rows,
          corners: 2 * (columns - 1) * (rows - 1),
        });
      }
    }
  });

  test('countTouching of free cells counts nothing', () => {
    expect(countTouching(['..', '..'])).toEqual({ sides: 0, corners: 0 });
    expect(countTouching([])).toEqual({ sides: 0, corners: 0 });
  });

  test('countTouching counts what looking at every pair of cells counts', () => {
    fc.assert(
      fc.property(cells, (rows) => {
        expect(countTouching(rows)).toEqual(countPairs(rows));
      }),
    );
  });

  test('countTouching does not care how the quilt is turned or mirrored', () => {
    fc.assert(
      fc.property(cells, (rows) => {
        const touching = countTouching(rows);
        const mirrored = rows.map((line) => [...line].toReversed().join(''));
        const turned = [...(rows[0] ?? '')].map((_, column) =>
          rows.map((line) => line[column]).join(''),
        );
        expect(countTouching(mirrored)).toEqual(touching);
        expect(countTouching(rows.toReversed())).toEqual(touching);
        expect(countTouching(turned)).toEqual(touching);
      }),
    );
  });
});
