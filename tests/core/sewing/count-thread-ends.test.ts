import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countChains } from '#core/sewing/count-chains.ts';
import { countThreadEnds } from '#core/sewing/count-thread-ends.ts';

const grid = fc.record({
  columns: fc.integer({ min: 1, max: 50 }),
  rows: fc.integer({ min: 1, max: 50 }),
});
const passes = fc.integer({ min: 1, max: 6 });

function endsOf(cells: { columns: number; rows: number }, chained: boolean, borderPasses: number) {
  return countThreadEnds(countChains(cells, { chained, borderPasses }));
}

describe('countThreadEnds', () => {
  test('countThreadEnds(3×2, 2 passes) has 19 seams in 7 runs', () => {
    // Two diagonals of 6 blocks, two rows of 2 joins, one row seam, two passes: 12 + 4 + 1 + 2.
    const cells = { columns: 3, rows: 2 };
    expect(endsOf(cells, false, 2)).toEqual({ links: 0, tails: 2 * 19 });
    expect(endsOf(cells, true, 2)).toEqual({ links: 19 - 7, tails: 2 * 7 });
  });

  test('countThreadEnds of one block has no links: two diagonals and the border', () => {
    const cells = { columns: 1, rows: 1 };
    expect(endsOf(cells, true, 1)).toEqual({ links: 0, tails: 6 });
    expect(endsOf(cells, false, 1)).toEqual(endsOf(cells, true, 1));
  });

  test('countThreadEnds: every seam begins after a tail or a link, and ends in one', () => {
    fc.assert(
      fc.property(grid, passes, (cells, borderPasses) => {
        const { columns, rows } = cells;
        const seams = 2 * columns * rows + rows * (columns - 1) + (rows - 1) + borderPasses;
        const singly = endsOf(cells, false, borderPasses);
        const chained = endsOf(cells, true, borderPasses);
        expect(singly.tails).toBe(2 * seams);
        expect(chained.tails + 2 * chained.links).toBe(2 * seams);
        expect(chained.tails).toBeLessThanOrEqual(singly.tails);
      }),
    );
  });
});
