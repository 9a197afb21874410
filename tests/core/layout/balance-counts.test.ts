import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceCounts } from '#core/layout/balance-counts.ts';
import { countLeft, makeBoard } from '#core/layout/board.ts';
import { dealPrints } from '#core/layout/deal-prints.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, countTouch, keepsPins, lettersOf } from '../../support/boards.ts';

const off = (left: readonly number[]) => left.reduce((sum, lack) => sum + Math.abs(lack), 0);

describe('balanceCounts', () => {
  test('balanceCounts touches no more than before, moves no pin, and comes no farther from the counts', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = makeBoard(task);
        const draw = startRandom(task.seed);
        dealPrints(board, draw);
        const before = {
          touch: countTouch(lettersOf(board), task.touch),
          off: off(countLeft(board)),
        };
        balanceCounts(board, draw);
        expect(countTouch(lettersOf(board), task.touch)).toBe(before.touch);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
        expect(off(countLeft(board))).toBeLessThanOrEqual(before.off);
      }),
    );
  });

  test('balanceCounts changes a whole chain: ABA with one B too few of a row of three becomes BAB', () => {
    const task = {
      grid: { columns: 3, rows: 1 },
      counts: [1, 2],
      touch: 'sides',
      seed: 1,
    } as const;
    const board = makeBoard({ ...task, fixed: ['...'] });
    for (const [at, place] of board.places.entries()) board.cells[place] = at % 2;
    balanceCounts(board, startRandom(1));
    expect(lettersOf(board)).toEqual(['BAB']);
    expect(countLeft(board)).toEqual([0, 0]);
  });
});
