import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, makeBoard } from '#core/layout/board.ts';
import { fillStrands } from '#core/layout/fill-strands.ts';
import { anyTask, countTouch, keepsPins, lettersOf } from '../../support/boards.ts';

describe('fillStrands', () => {
  test('fillStrands meets every count and moves no pin', () => {
    fc.assert(
      fc.property(anyTask(), fc.boolean(), (task, areColumns) => {
        const board = makeBoard(task);
        fillStrands(
          board,
          areColumns,
          task.counts.map((_, print) => print),
        );
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test('fillStrands of five prints alike on 10×10 touches nowhere: each runs over far from itself', () => {
    const counts = [20, 20, 20, 20, 20];
    const board = makeBoard({ grid: { columns: 10, rows: 10 }, counts, touch: 'corners', seed: 1 });
    fillStrands(board, false, [0, 1, 2, 3, 4]);
    expect(countTouch(lettersOf(board), 'corners')).toBe(0);
  });
});
