import { describe, expect, test } from 'vitest';
import { writeBoard } from '#core/layout/board.ts';
import { isPaired, pairPrints } from '#core/layout/pair-prints.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { countTouch, keepsPins } from '../../support/boards.ts';
import { fewestByFrontier } from '../../support/fewest-by-frontier.ts';
import { tallyPrints } from '../../support/layouts.ts';

const task = (columns: number, rows: number, counts: readonly number[]) => ({
  ...{ grid: { columns, rows }, counts, touch: 'corners' as const, seed: 1 },
});

/** Every way to share some cells among four prints, each with one at least. */
function listCounts(cells: number): readonly (readonly number[])[] {
  const all: number[][] = [];
  for (let a = 1; a < cells; a += 1) {
    for (let b = 1; a + b < cells; b += 1) {
      for (let c = 1; a + b + c < cells; c += 1) all.push([a, b, c, cells - a - b - c]);
    }
  }
  return all;
}

describe('pairPrints', () => {
  test.each([
    [2, 2],
    [3, 2],
    [3, 3],
    [4, 3],
    [3, 5],
    [4, 4],
  ])(
    'pairPrints(%i×%i) finds a layout just where a table over all layouts has one, whatever the counts',
    (columns, rows) => {
      const [short, long] = [Math.min(columns, rows), Math.max(columns, rows)];
      const table = fewestByFrontier({ columns: short, rows: long }, 4, 'corners');
      for (const counts of listCounts(columns * rows)) {
        const board = pairPrints(task(columns, rows, counts), 0);
        const key = counts.toSorted((one, other) => other - one).join();
        expect([counts, board !== undefined]).toEqual([counts, table.get(key) === 0]);
        if (board === undefined) continue;
        expect(countTouch(writeBoard(board), 'corners')).toBe(0);
        expect(tallyPrints(writeBoard(board), 4)).toEqual(counts);
      }
    },
  );

  test('pairPrints meets the pins of any layout that it could have laid', () => {
    const draw = startRandom(4);
    for (let turn = 0; turn < 200; turn += 1) {
      const [columns, rows] = [2 + draw(8), 2 + draw(8)];
      const own = Array.from({ length: rows }, (_, row) => {
        const start = draw(2);
        const pair = row % 2 === 0 ? 'AC' : 'BD';
        return Array.from({ length: columns }, (_, column) => pair[(column + start) % 2]).join('');
      });
      const fixed = own.map((row) => row.replace(/./g, (letter) => (draw(3) === 0 ? letter : '.')));
      const counts = tallyPrints(own, 4);
      if (counts.some((count) => count === 0)) continue;
      const board = pairPrints({ ...task(columns, rows, counts), fixed }, draw(12));
      const cells = board === undefined ? [] : writeBoard(board);
      expect(cells).toHaveLength(rows);
      expect([countTouch(cells, 'corners'), tallyPrints(cells, 4)]).toEqual([0, counts]);
      expect(keepsPins(cells, fixed)).toBe(true);
    }
  });

  test('pairPrints with pins that forbid it finds nothing', () => {
    expect(pairPrints({ ...task(2, 2, [1, 1, 1, 1]), fixed: ['A.', '..'] }, 0)).toBeDefined();
    expect(
      pairPrints({ ...task(4, 4, [4, 4, 4, 4]), fixed: ['A...', '.A..', '....', '....'] }, 0),
    ).toBeUndefined();
  });
});

describe('isPaired', () => {
  test('isPaired is for four prints with blocks, corners, and two rows and columns', () => {
    expect(isPaired(task(4, 4, [4, 4, 4, 4]))).toBe(true);
    expect(isPaired(task(4, 4, [4, 4, 4, 4, 0]))).toBe(true);
    expect(isPaired(task(4, 4, [4, 4, 8, 0]))).toBe(false);
    expect(isPaired(task(16, 1, [4, 4, 4, 4]))).toBe(false);
    expect(isPaired({ ...task(4, 4, [4, 4, 4, 4]), touch: 'sides' })).toBe(false);
  });
});
