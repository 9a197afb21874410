import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countLeft,
  FREE,
  layOn,
  makeBoard,
  PAIR,
  weighHarm,
  writeBoard,
} from '#core/layout/board.ts';
import { countTouching } from '#core/layout/count-touching.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, fillBoard } from '../../support/boards.ts';

const task = { grid: { columns: 3, rows: 2 }, counts: [3, 3], touch: 'corners', seed: 1 } as const;

describe('makeBoard', () => {
  test('makeBoard lays pins and leaves the rest free', () => {
    const board = makeBoard({ ...task, fixed: ['A..', '..B'] });
    expect(writeBoard(board)).toEqual(['A..', '..B']);
    expect(board.loose).toHaveLength(4);
    expect([...board.loose].every((place) => board.cells[place] === FREE)).toBe(true);
    expect(countLeft(board)).toEqual([2, 2]);
  });

  test('makeBoard knows row and column of each cell, and four or eight neighbours', () => {
    const board = makeBoard(task);
    expect([...board.places].map((place) => [board.row[place], board.column[place]])).toEqual([
      [0, 0],
      [0, 1],
      [0, 2],
      [1, 0],
      [1, 1],
      [1, 2],
    ]);
    expect(board.near).toHaveLength(8);
    expect(makeBoard({ ...task, touch: 'sides' }).near).toHaveLength(4);
  });
});

describe('layOn', () => {
  test('layOn(writeBoard) is the same board', () => {
    const board = makeBoard(task);
    layOn(board, ['ABA', 'BAB']);
    expect(writeBoard(board)).toEqual(['ABA', 'BAB']);
    expect(countLeft(board)).toEqual([0, 0]);
  });
});

describe('weighHarm', () => {
  test('weighHarm is PAIR for each touching pair and one more for each at a side', () => {
    fc.assert(
      fc.property(anyTask(), (any) => {
        const board = fillBoard(makeBoard(any), startRandom(3));
        const { sides, corners } = countTouching(writeBoard(board));
        const pairs = sides + (any.touch === 'corners' ? corners : 0);
        expect(weighHarm(board)).toBe(PAIR * pairs + sides);
      }),
    );
  });
});
