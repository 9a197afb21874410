/**
 * Arrangements of small quilts against all that there are, laid out one by one.
 * The rule is plain and promises no optimum; here is how near it comes.
 */
import { describe, expect, test } from 'vitest';
import { arrangePrints } from '#core/layout/arrange-prints.ts';
import { countTouching } from '#core/layout/count-touching.ts';

interface Grid {
  readonly columns: number;
  readonly rows: number;
}

const GRIDS: readonly Grid[] = [1, 2, 3].flatMap((columns) =>
  [1, 2, 3].map((rows) => ({ columns, rows })).filter(({ rows }) => columns * rows <= 6),
);

function* lay(cells: number, left: readonly number[]): Generator<string> {
  if (cells === 0) {
    yield '';
    return;
  }
  for (const [print, count] of left.entries()) {
    if (count === 0) continue;
    const rest = left.with(print, count - 1);
    for (const tail of lay(cells - 1, rest)) yield String.fromCharCode(65 + print) + tail;
  }
}

function cutRows(all: string, { columns, rows }: Grid): readonly string[] {
  return Array.from({ length: rows }, (_, row) => all.slice(row * columns, (row + 1) * columns));
}

/** The fewest like prints at a side, and among those the fewest at a corner. */
function findFewest(grid: Grid, counts: readonly number[]) {
  let fewest = { sides: Number.POSITIVE_INFINITY, corners: 0 };
  for (const all of lay(grid.columns * grid.rows, counts)) {
    const found = countTouching(cutRows(all, grid));
    const gap = found.sides - fewest.sides || found.corners - fewest.corners;
    if (gap < 0) fewest = found;
  }
  return fewest;
}

/** All counts of three prints that fill a grid, some of none among them. */
function listCounts(cells: number): readonly (readonly number[])[] {
  return Array.from({ length: cells + 1 }, (_, first) => first).flatMap((first) =>
    Array.from({ length: cells - first + 1 }, (_, second) => [
      first,
      second,
      cells - first - second,
    ]),
  );
}

describe('arrangePrints', () => {
  test.each(GRIDS)(
    'arrangePrints($columns×$rows) of three prints touches at no more sides than it must, whatever the counts',
    (grid) => {
      for (const counts of listCounts(grid.columns * grid.rows)) {
        const { sides } = countTouching(arrangePrints(grid, counts));
        expect([counts, sides]).toEqual([counts, findFewest(grid, counts).sides]);
      }
    },
  );

  test('arrangePrints(3×3) of three prints touches at no more than two sides beyond what it must', () => {
    const grid = { columns: 3, rows: 3 };
    for (const counts of listCounts(9)) {
      const { sides } = countTouching(arrangePrints(grid, counts));
      expect(sides).toBeLessThanOrEqual(findFewest(grid, counts).sides + 2);
    }
  });

  test.each([
    [{ columns: 3, rows: 3 }, [3, 2, 2, 2], { sides: 0, corners: 1 }],
    [{ columns: 2, rows: 4 }, [2, 2, 2, 2], { sides: 0, corners: 0 }],
    [{ columns: 4, rows: 2 }, [2, 2, 2, 2], { sides: 0, corners: 0 }],
    [{ columns: 3, rows: 3 }, [3, 3, 3], { sides: 0, corners: 4 }],
  ])('arrangePrints(%j, %j) touches as little as can be: %j', (grid, counts, fewest) => {
    expect(findFewest(grid, counts)).toEqual(fewest);
    expect(countTouching(arrangePrints(grid, counts))).toEqual(fewest);
  });
});
