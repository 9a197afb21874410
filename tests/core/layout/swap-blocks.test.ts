import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { swapBlocks } from '#core/layout/swap-blocks.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

/** A grid of letters and two places in it. */
const swaps = fc
  .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
  .chain(([columns, rows]) =>
    fc.record({
      cells: fc.array(
        fc.string({
          unit: fc.constantFrom('A', 'B', 'C', 'D'),
          minLength: columns,
          maxLength: columns,
        }),
        { minLength: rows, maxLength: rows },
      ),
      one: fc.integer({ min: 0, max: columns * rows - 1 }),
      other: fc.integer({ min: 0, max: columns * rows - 1 }),
    }),
  );

describe('swapBlocks', () => {
  test('swapBlocks changes two blocks of one row, and of two', () => {
    expect(swapBlocks(['ABC', 'DEF'], 0, 2)).toEqual(['CBA', 'DEF']);
    expect(swapBlocks(['ABC', 'DEF'], 1, 5)).toEqual(['AFC', 'DEB']);
  });

  test('swapBlocks leaves all else, and its own input, as they were', () => {
    fc.assert(
      fc.property(swaps, ({ cells, one, other }) => {
        const swapped = swapBlocks(deepFreeze(cells), one, other);
        const [before, after] = [cells.join(''), swapped.join('')];
        expect(swapped.map((row) => row.length)).toEqual(cells.map((row) => row.length));
        expect([after[one], after[other]]).toEqual([before[other], before[one]]);
        for (const [place, letter] of [...before].entries()) {
          if (place !== one && place !== other) expect(after[place]).toBe(letter);
        }
      }),
    );
  });

  test('swapBlocks twice is as before', () => {
    fc.assert(
      fc.property(swaps, ({ cells, one, other }) => {
        expect(swapBlocks(swapBlocks(cells, one, other), one, other)).toEqual(cells);
      }),
    );
  });
});
