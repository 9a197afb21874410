import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { LAYOUT_EFFORT } from '#core/layout/effort.ts';
import { findLayout } from '#core/layout/find-layout.ts';
import { startRandom } from '#core/layout/start-random.ts';

describe('LAYOUT_EFFORT', () => {
  test('LAYOUT_EFFORT ends a look for what cannot be within its steps, give or take one way to begin', () => {
    const grid = { columns: 40, rows: 40 };
    const board = makeBoard(
      { grid, counts: [800, 400, 400], touch: 'corners', seed: 1 },
      LAYOUT_EFFORT.work,
    );
    findLayout(board, 0, { effort: LAYOUT_EFFORT, draw: startRandom(1) });
    expect(board.work.left).toBeGreaterThan(-0.1 * LAYOUT_EFFORT.work);
  });
});
