import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FREE, makeBoard } from '#core/layout/board.ts';
import { listStarts } from '#core/layout/list-starts.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, keepsPins, lettersOf } from '../../support/boards.ts';

describe('listStarts', () => {
  test('listStarts fills the board each time, with prints that have blocks, and moves no pin', () => {
    fc.assert(
      fc.property(anyTask(6), (task) => {
        const board = makeBoard(task);
        const empty = board.cells.slice();
        let starts = 0;
        for (const lay of listStarts(board, startRandom(task.seed))) {
          board.cells.set(empty);
          lay(board);
          starts += 1;
          for (const place of board.places) {
            const print = board.cells[place] ?? FREE;
            expect(print).not.toBe(FREE);
            expect(task.counts[print]).toBeGreaterThan(0);
          }
          expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
        }
        expect(starts).toBeGreaterThan(20);
      }),
      { numRuns: 50 },
    );
  });
});
