import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countThreadEnds } from '#core/sewing/count-thread-ends.ts';

const grid = fc.record({
  columns: fc.integer({ min: 1, max: 50 }),
  rows: fc.integer({ min: 1, max: 50 }),
});
const passes = fc.integer({ min: 1, max: 6 });

describe('countThreadEnds', () => {
  test('countThreadEnds(3×2, 2 passes) has 19 seams in 7 runs', () => {
    // Two diagonals of 6 blocks, two rows of 2 joins, one row seam, two passes: 12 + 4 + 1 + 2.
    const { chained, singly } = countThreadEnds({ columns: 3, rows: 2 }, 2);
    expect(singly).toEqual({ links: 0, tails: 2 * 19 });
    expect(chained).toEqual({ links: 19 - 7, tails: 2 * 7 });
  });

  test('countThreadEnds of one block has no links: two diagonals and the border', () => {
    const { chained, singly } = countThreadEnds({ columns: 1, rows: 1 }, 1);
    expect(chained).toEqual({ links: 0, tails: 6 });
    expect(singly).toEqual(chained);
  });

  test('countThreadEnds: every seam begins after a tail or a link, and ends in one', () => {
    fc.assert(
      fc.property(grid, passes, (cells, borderPasses) => {
        const { columns, rows } = cells;
        const seams = 2 * columns * rows + rows * (columns - 1) + (rows - 1) + borderPasses;
        const { chained, singly } = countThreadEnds(cells, borderPasses);
        expect(singly.tails).toBe(2 * seams);
        expect(chained.tails + 2 * chained.links).toBe(2 * seams);
        expect(chained.tails).toBeLessThanOrEqual(singly.tails);
      }),
    );
  });
});
