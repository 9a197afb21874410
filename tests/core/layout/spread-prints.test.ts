import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, layOn, makeBoard } from '#core/layout/board.ts';
import { measureSpread } from '#core/layout/measure-spread.ts';
import { spreadPrints } from '#core/layout/spread-prints.ts';
import { startRandom } from '#core/layout/start-random.ts';
import {
  anyTask,
  countTouch,
  fillBoard,
  keepsPins,
  lettersOf,
  unevenness,
} from '../../support/boards.ts';

describe('spreadPrints', () => {
  test('spreadPrints touches no more, lies no less evenly, keeps counts and pins', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const before = lettersOf(board);
        spreadPrints(board, { effort: 30, draw: startRandom(1) });
        const after = lettersOf(board);
        expect(countTouch(after, task.touch)).toBeLessThanOrEqual(countTouch(before, task.touch));
        expect(unevenness(after)).toBeLessThanOrEqual(unevenness(before));
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(after, task.fixed)).toBe(true);
      }),
    );
  });

  test('spreadPrints leaves alone what is even', () => {
    const board = makeBoard({
      grid: { columns: 5, rows: 5 },
      counts: [5, 5, 5, 5, 5],
      touch: 'corners',
      seed: 1,
    });
    const cells = ['ABCDE', 'CDEAB', 'EABCD', 'BCDEA', 'DEABC'];
    layOn(board, cells);
    spreadPrints(board, { effort: 140, draw: startRandom(1) });
    expect(lettersOf(board)).toEqual(cells);
  });

  test('spreadPrints undoes bands where single exchanges cannot', () => {
    const bands = [
      'ABABABAB',
      'CDCDCDCD',
      'BABABABA',
      'DCDCDCDC',
      'EFEFEFEF',
      'GHGHGHGH',
      'FEFEFEFE',
      'HGHGHGHG',
    ];
    const counts = [8, 8, 8, 8, 8, 8, 8, 8];
    const board = makeBoard({ grid: { columns: 8, rows: 8 }, counts, touch: 'corners', seed: 1 });
    layOn(board, bands);
    spreadPrints(board, { effort: 140, draw: startRandom(1) });
    expect(countTouch(lettersOf(board), 'corners')).toBe(0);
    for (const print of counts.keys()) {
      const { rows, columns } = measureSpread(lettersOf(board), print);
      expect(Math.max(rows, columns)).toBeLessThanOrEqual(1);
    }
  });
});
