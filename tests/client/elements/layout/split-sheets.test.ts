import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitSheets } from '../../../../client/elements/layout/split-sheets.ts';

const side = fc.integer({ min: 1, max: 40 });
const grid = (columns: number, rows: number) =>
  Array.from({ length: rows }, (_, row) => 'ABCDE'.repeat(9).slice(row % 5, (row % 5) + columns));

describe('splitSheets', () => {
  test('splitSheets keeps twenty by twenty on one page', () => {
    expect(splitSheets(grid(20, 20))).toEqual([
      { page: 0, row: 0, column: 0, cells: grid(20, 20) },
    ]);
  });

  test('splitSheets parts what is one longer into two of about a half', () => {
    const corners = splitSheets(grid(21, 5)).map(({ page, row, column }) => [page, row, column]);
    expect(corners).toEqual([
      [0, 0, 0],
      [1, 0, 11],
    ]);
    expect(splitSheets(grid(40, 40))).toHaveLength(4);
  });

  test('splitSheets puts each block on one page, none of more than twenty a side', () => {
    fc.assert(
      fc.property(side, side, (columns, rows) => {
        const cells = grid(columns, rows);
        const pages = splitSheets(cells);
        const seen = cells.map((row) => Array.from(row, () => 0));
        for (const { row, column, cells: part } of pages) {
          expect(Math.max(part.length, part[0]?.length ?? 0)).toBeLessThanOrEqual(20);
          for (const [down, line] of part.entries()) {
            for (const [across, letter] of [...line].entries()) {
              expect(letter).toBe(cells[row + down]?.[column + across]);
              const marks = seen[row + down] ?? [];
              marks[column + across] = (marks[column + across] ?? 0) + 1;
            }
          }
        }
        expect(seen.flat().every((times) => times === 1)).toBe(true);
        expect(pages.map(({ page }) => page)).toEqual(pages.map((_, at) => at));
      }),
    );
  });
});
