import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { layBricks } from '#core/layout/lay-bricks.ts';
import { lettersOf } from '../../support/boards.ts';

describe('layBricks', () => {
  test('layBricks of three prints has one pair of its like in every window of two by two, at a side', () => {
    const board = makeBoard({
      grid: { columns: 7, rows: 8 },
      counts: [19, 19, 18],
      touch: 'corners',
      seed: 1,
    });
    layBricks(board, [0, 1, 2]);
    const cells = lettersOf(board);
    for (let row = 0; row < 7; row += 1) {
      for (let column = 0; column < 6; column += 1) {
        const [a, b, c, d] = [0, 1].flatMap((down) =>
          [0, 1].map((across) => cells[row + down]?.[column + across]),
        );
        const pairs = [a === b, c === d, a === c, b === d, a === d, b === c];
        expect(pairs.filter(Boolean)).toHaveLength(1);
        expect([a === d, b === c, a === b, c === d]).toEqual([false, false, false, false]);
      }
    }
  });
});
