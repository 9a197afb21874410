import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, makeBoard } from '#core/layout/board.ts';
import { packStrands } from '#core/layout/pack-strands.ts';
import { anyTask, keepsPins, lettersOf } from '../../support/boards.ts';

describe('packStrands', () => {
  test('packStrands meets every count and moves no pin', () => {
    fc.assert(
      fc.property(anyTask(), fc.boolean(), (task, areColumns) => {
        const board = makeBoard(task);
        packStrands(
          board,
          areColumns,
          task.counts.map((_, print) => print),
        );
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test('packStrands gives four great prints a strand each, so that only the small fifth may touch', () => {
    const counts = [15, 16, 14, 15, 4];
    const board = makeBoard({ grid: { columns: 8, rows: 8 }, counts, touch: 'corners', seed: 1 });
    packStrands(board, false, [0, 1, 2, 3, 4]);
    for (const print of [0, 1, 2, 3]) {
      const own = [...board.places].filter((place) => board.cells[place] === print);
      const touching = own.filter((place) =>
        board.near.some((step) => board.cells[place + step] === print),
      );
      expect(touching).toEqual([]);
    }
  });
});
