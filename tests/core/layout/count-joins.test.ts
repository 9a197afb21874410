import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countJoins } from '#core/layout/count-joins.ts';
import { listJoins } from '#core/layout/list-joins.ts';

/** Every way to lay some blocks on some places. */
function* choose(places: number, blocks: number): Generator<readonly boolean[]> {
  if (places === 0) {
    if (blocks === 0) yield [];
    return;
  }
  for (const rest of choose(places - 1, blocks)) yield [false, ...rest];
  if (blocks > 0) for (const rest of choose(places - 1, blocks - 1)) yield [true, ...rest];
}

describe('countJoins', () => {
  test('countJoins gives mean and variance of all ways to lay the same blocks, one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 2, max: 3 }),
        fc.constantFrom('corners' as const, 'sides' as const),
        fc.nat({ max: 12 }),
        (columns, rows, touch, some) => {
          const joins = listJoins({ columns, rows }, touch);
          const blocks = some % (columns * rows + 1);
          const counts = [...choose(columns * rows, blocks)].map((shows) =>
            countJoins(joins, shows),
          );
          const mean = counts.reduce((sum, { observed }) => sum + observed, 0) / counts.length;
          const square = counts.reduce((sum, { observed }) => sum + (observed - mean) ** 2, 0);
          expect(counts[0]?.expected).toBeCloseTo(mean, 9);
          expect(counts[0]?.variance).toBeCloseTo(square / counts.length, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('countJoins of one print everywhere varies not at all, and has no z', () => {
    const joins = listJoins({ columns: 3, rows: 3 }, 'sides');
    expect(countJoins(joins, Array(9).fill(true))).toEqual({
      observed: 12,
      expected: 12,
      variance: 0,
    });
    expect(countJoins(joins, Array(9).fill(false))).toEqual({
      observed: 0,
      expected: 0,
      variance: 0,
    });
  });
});
