import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { listLines } from '#core/layout/list-lines.ts';

const board = makeBoard({ grid: { columns: 3, rows: 2 }, counts: [6], touch: 'sides', seed: 1 });

describe('listLines', () => {
  test('listLines gives the rows from the top, or the columns from the left', () => {
    expect(listLines(board, false)).toEqual([
      [...board.places].slice(0, 3),
      [...board.places].slice(3),
    ]);
    const columns = [0, 1, 2].map((column) => [board.places[column], board.places[column + 3]]);
    expect(listLines(board, true)).toEqual(columns);
  });
});
