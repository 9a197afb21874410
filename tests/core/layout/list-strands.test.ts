import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { listStrands } from '#core/layout/list-strands.ts';
import { anyTask } from '../../support/boards.ts';

describe('listStrands', () => {
  test('listStrands holds each cell once, and no two cells of a strand touch', () => {
    fc.assert(
      fc.property(anyTask(9, false), fc.boolean(), fc.boolean(), (task, areColumns, isPacked) => {
        const board = makeBoard(task);
        const order = task.counts.map((_, print) => print);
        const strands = listStrands(board, areColumns, { order, isPacked });
        expect(strands).toHaveLength(task.touch === 'corners' ? 4 : 2);
        expect(strands.flat().sort((one, other) => one - other)).toEqual([...board.places]);
        for (const strand of strands) {
          const own = new Set(strand);
          expect(strand.some((place) => board.near.some((step) => own.has(place + step)))).toBe(
            false,
          );
        }
      }),
    );
  });

  test('listStrands of a 5×5 grid lets a print of eight end where the first strand ends', () => {
    const board = makeBoard({
      grid: { columns: 5, rows: 5 },
      counts: [8, 7, 5, 5],
      touch: 'corners',
      seed: 1,
    });
    const strands = listStrands(board, false, { order: [0, 1, 2, 3], isPacked: false });
    expect(strands.map((strand) => strand.length)).toEqual([8, 7, 5, 5]);
  });
});
