import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOn, makeBoard, weighHarm } from '#core/layout/board.ts';
import { followChain } from '#core/layout/follow-chain.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, countTouch, fillBoard, lettersOf } from '../../support/boards.ts';

describe('followChain', () => {
  test('followChain takes all cells of two prints that hang together, and marks them', () => {
    const board = makeBoard({
      grid: { columns: 4, rows: 2 },
      counts: [4, 2, 2],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, ['ABCA', 'CABA']);
    const seen = new Uint8Array(board.cells.length);
    const [start = 0] = board.places;
    const chain = followChain(board, start, 1, seen);
    expect(chain.map((place) => [board.row[place], board.column[place]]).sort()).toEqual([
      [0, 0],
      [0, 1],
      [0, 3],
      [1, 1],
      [1, 2],
      [1, 3],
    ]);
    expect(seen.reduce((sum, mark) => sum + mark, 0)).toBe(6);
  });

  test('followChain: exchanging the prints of a chain leaves as many pairs touching', () => {
    fc.assert(
      fc.property(anyTask(), fc.nat(), fc.nat(), (task, at, print) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const [before, harm] = [countTouch(lettersOf(board), task.touch), weighHarm(board)];
        const start = board.places[at % board.places.length] ?? 0;
        const own = board.cells[start] ?? 0;
        const other = print % board.prints;
        fc.pre(own !== other);
        for (const cell of followChain(board, start, other, new Uint8Array(board.cells.length))) {
          board.cells[cell] = board.cells[cell] === own ? other : own;
        }
        expect([countTouch(lettersOf(board), task.touch), weighHarm(board)]).toEqual([
          before,
          harm,
        ]);
      }),
    );
  });
});
