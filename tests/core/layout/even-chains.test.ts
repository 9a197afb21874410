import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, makeBoard } from '#core/layout/board.ts';
import { evenChains } from '#core/layout/even-chains.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { tallyBoard } from '#core/layout/tally-board.ts';
import {
  anyTask,
  countTouch,
  fillBoard,
  keepsPins,
  lettersOf,
  unevenness,
} from '../../support/boards.ts';

describe('evenChains', () => {
  test('evenChains touches no more, lies no less evenly, keeps counts and pins, and the tally true', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const before = lettersOf(board);
        const tally = tallyBoard(board);
        const prints = task.counts.map((_, print) => print);
        evenChains(board, tally, { prints, draw: startRandom(1) });
        const after = lettersOf(board);
        expect(countTouch(after, task.touch)).toBe(countTouch(before, task.touch));
        expect(unevenness(after)).toBeLessThanOrEqual(unevenness(before));
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(after, task.fixed)).toBe(true);
        expect(tally.rows).toEqual(tallyBoard(board).rows);
        expect(tally.columns).toEqual(tallyBoard(board).columns);
      }),
    );
  });
});
