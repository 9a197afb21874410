import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, layOn, makeBoard } from '#core/layout/board.ts';
import { mendCounts } from '#core/layout/mend-counts.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { tallyBoard } from '#core/layout/tally-board.ts';
import { anyTask, fillBoard, keepsPins, lettersOf } from '../../support/boards.ts';

describe('mendCounts', () => {
  test('mendCounts meets every count and moves no pin', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test('mendCounts changes the block that then touches least: of AAAB the A farthest from B', () => {
    const board = makeBoard({
      grid: { columns: 4, rows: 1 },
      counts: [2, 2],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, ['AAAB']);
    mendCounts(board, tallyBoard(board));
    expect(lettersOf(board)).toEqual(['ABAB']);
  });
});
