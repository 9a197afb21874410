import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { followPins } from '#core/layout/follow-pins.ts';

const task = {
  grid: { columns: 5, rows: 2 },
  counts: [2, 2, 2, 2, 2],
  touch: 'corners',
  seed: 1,
} as const;

describe('followPins', () => {
  test('followPins takes the order in which the pins were laid', () => {
    const board = makeBoard({ ...task, fixed: ['C.A..', '.D...'] });
    expect(followPins(board, [0, 1, 2, 3, 4], 2)).toEqual([2, 1, 0, 3, 4]);
  });

  test('followPins without pins keeps the order', () => {
    expect(followPins(makeBoard(task), [4, 3, 2, 1, 0], 3)).toEqual([4, 3, 2, 1, 0]);
  });
});
