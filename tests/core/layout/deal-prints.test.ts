import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FREE, makeBoard } from '#core/layout/board.ts';
import { dealPrints } from '#core/layout/deal-prints.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, countTouch, keepsPins, lettersOf } from '../../support/boards.ts';
import { equalCounts } from '../../support/layouts.ts';

describe('dealPrints', () => {
  test('dealPrints leaves no cell free and moves no pin', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = makeBoard(task);
        dealPrints(board, startRandom(task.seed));
        expect([...board.places].every((place) => board.cells[place] !== FREE)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test.each([
    ['corners', 5],
    ['corners', 8],
    ['sides', 3],
    ['sides', 6],
  ] as const)(
    'dealPrints touches nowhere (%s) with %i prints or more and no pins',
    (touch, prints) => {
      // Beside a cell at most four neighbours lie when it is dealt, two of them at sides.
      for (let seed = 0; seed < 20; seed += 1) {
        const grid = { columns: 3 + seed, rows: 21 - seed };
        const counts = equalCounts(grid.columns * grid.rows, prints);
        const board = makeBoard({ grid, counts, touch, seed });
        dealPrints(board, startRandom(seed));
        expect(countTouch(lettersOf(board), touch)).toBe(0);
      }
    },
  );

  test('dealPrints takes no print that has no blocks', () => {
    const board = makeBoard({
      grid: { columns: 4, rows: 4 },
      counts: [8, 0, 8],
      touch: 'corners',
      seed: 1,
    });
    dealPrints(board, startRandom(1));
    expect(lettersOf(board).join('')).toMatch(/^[AC]+$/);
  });
});
