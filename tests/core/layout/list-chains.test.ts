import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { listChains } from '#core/layout/list-chains.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { anyTask, fillBoard } from '../../support/boards.ts';

describe('listChains', () => {
  test('listChains gives every cell of the two prints once, where none is pinned, and what each line has', () => {
    fc.assert(
      fc.property(anyTask(8, false), (task) => {
        fc.pre(task.counts.length > 1);
        const board = fillBoard(makeBoard(task), startRandom(task.seed));
        const chains = listChains(board, 0, 1);
        const own = [...board.places].filter((place) => (board.cells[place] ?? 9) < 2);
        expect(chains.flatMap(({ cells }) => cells).sort((a, b) => a - b)).toEqual(own);
        for (const { cells, surplus, lines } of chains) {
          const firsts = cells.filter((cell) => board.cells[cell] === 0).length;
          expect(surplus).toBe(2 * firsts - cells.length);
          const inRows = [...lines].filter(
            (_, at) => at % 2 === 1 && (lines[at - 1] ?? 0) < task.grid.rows,
          );
          expect(inRows.reduce((sum, more) => sum + more, 0)).toBe(surplus);
        }
      }),
    );
  });

  test('listChains leaves out a chain with a pinned cell', () => {
    const task = {
      grid: { columns: 2, rows: 2 },
      counts: [2, 2],
      touch: 'corners',
      seed: 1,
    } as const;
    const board = fillBoard(makeBoard({ ...task, fixed: ['A.', '..'] }), startRandom(1));
    expect(listChains(board, 0, 1)).toEqual([]);
  });
});
