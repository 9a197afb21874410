import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, makeBoard } from '#core/layout/board.ts';
import { findLayout } from '#core/layout/find-layout.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, countTouch, keepsPins, lettersOf } from '../../support/boards.ts';

const effort = { begin: 10_000, repair: 10_000, spread: 0, search: 0, work: 5_000_000 };

describe('findLayout', () => {
  test('findLayout tells how often the board it leaves touches, with its counts and pins', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = makeBoard(task);
        const pairs = findLayout(board, 0, { effort, draw: startRandom(task.seed) });
        expect(countTouch(lettersOf(board), task.touch)).toBe(pairs);
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('findLayout tries one way at least, however little it may do', () => {
    const board = makeBoard({
      grid: { columns: 6, rows: 6 },
      counts: [18, 18],
      touch: 'sides',
      seed: 1,
    });
    const none = { begin: 0, repair: 0, spread: 0, search: 0, work: 5_000_000 };
    expect(findLayout(board, 0, { effort: none, draw: startRandom(1) })).toBe(0);
  });
});
