import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countLeft, layOn, makeBoard, weighHarm } from '#core/layout/board.ts';
import { evenOut } from '#core/layout/even-out.ts';
import { listJoins } from '#core/layout/list-joins.ts';
import { measureMoran } from '#core/layout/measure-moran.ts';
import { measureSpread } from '#core/layout/measure-spread.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { tallyBoard } from '#core/layout/tally-board.ts';
import { anyTask, fillBoard, keepsPins, lettersOf, unevenness } from '../../support/boards.ts';

describe('evenOut', () => {
  test('evenOut touches no more, lies no less evenly, keeps counts and pins', () => {
    fc.assert(
      fc.property(anyTask(), (task) => {
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const [harm, uneven] = [weighHarm(board), unevenness(lettersOf(board))];
        evenOut(board, tallyBoard(board), { steps: 500, draw: startRandom(1) });
        expect(weighHarm(board)).toBeLessThanOrEqual(harm);
        expect(unevenness(lettersOf(board))).toBeLessThanOrEqual(uneven);
        expect(countLeft(board).every((lack) => lack === 0)).toBe(true);
        expect(keepsPins(lettersOf(board), task.fixed)).toBe(true);
      }),
    );
  });

  test('evenOut brings every row and column within one of the fair share where nothing hinders', () => {
    const board = makeBoard({
      grid: { columns: 8, rows: 8 },
      counts: [16, 16, 16, 16],
      touch: 'sides',
      seed: 1,
    });
    layOn(board, [
      'ABABABAB',
      'BABABABA',
      'ABABABAB',
      'BABABABA',
      'CDCDCDCD',
      'DCDCDCDC',
      'CDCDCDCD',
      'DCDCDCDC',
    ]);
    evenOut(board, tallyBoard(board), { steps: 30_000, draw: startRandom(1) });
    for (const print of [0, 1, 2, 3]) {
      const { rows, columns } = measureSpread(lettersOf(board), print);
      expect([rows <= 1, columns <= 1]).toEqual([true, true]);
    }
  });

  test('evenOut with values mixes lights among darks better than without', () => {
    const values = [0, 20, 40, 60, 80, 100];
    const mix = (given?: readonly number[]) => {
      const grid = { columns: 12, rows: 12 };
      const board = makeBoard({ grid, counts: values.map(() => 24), touch: 'sides', seed: 1 });
      fillBoard(board, startRandom(1));
      evenOut(board, tallyBoard(board), { steps: 40_000, draw: startRandom(1), values: given });
      const laid = [...lettersOf(board).join('')].map(
        (letter) => values[letter.charCodeAt(0) - 65] ?? 0,
      );
      return measureMoran(listJoins(grid, 'sides'), laid)?.moran ?? 0;
    };
    expect(mix(values)).toBeLessThan(mix() - 0.05);
  });
});
