import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, layOn, makeBoard, PAIR, weighHarm } from '#core/layout/board.ts';
import { repairTouching, swap } from '#core/layout/repair-touching.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { tallyBoard } from '#core/layout/tally-board.ts';
import { anyTask, fillBoard, keepsPins, lettersOf } from '../../support/boards.ts';

describe('repairTouching', () => {
  test('repairTouching never does harm, tells what it left, and keeps counts and pins', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const harm = weighHarm(board);
        const draw = startRandom(1);
        const left = repairTouching(board, tallyBoard(board), { harm, goal: 0, steps: 3000, draw });
        expect(left).toBeLessThanOrEqual(harm);
        expect(weighHarm(board)).toBe(left);
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test('repairTouching parts stripes of three prints into a layout free of touching at sides', () => {
    const board = makeBoard({
      grid: { columns: 6, rows: 6 },
      counts: [12, 12, 12],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, ['AAAAAA', 'AAAAAA', 'BBBBBB', 'BBBBBB', 'CCCCCC', 'CCCCCC']);
    const harm = weighHarm(board);
    const repair = { harm, goal: 0, steps: 100_000, draw: startRandom(1) };
    expect(Math.floor(harm / PAIR)).toBe(48);
    expect(repairTouching(board, tallyBoard(board), repair)).toBe(0);
  });

  test('repairTouching with no step to spend leaves the board as it is', () => {
    const board = makeBoard({
      grid: { columns: 2, rows: 2 },
      counts: [2, 2],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, ['AA', 'BB']);
    const repair = { harm: weighHarm(board), goal: 0, steps: 0, draw: startRandom(1) };
    repairTouching(board, tallyBoard(board), repair);
    expect(lettersOf(board)).toEqual(['AA', 'BB']);
  });
});

describe('swap', () => {
  test('swap twice is as before', () => {
    const board = makeBoard({
      grid: { columns: 2, rows: 1 },
      counts: [1, 1],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, ['AB']);
    const tally = tallyBoard(board);
    const [one = 0, other = 0] = board.places;
    swap(board, tally, one, other);
    expect(lettersOf(board)).toEqual(['BA']);
    swap(board, tally, one, other);
    expect(lettersOf(board)).toEqual(['AB']);
  });
});
