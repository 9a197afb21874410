/**
 * The fewest touching pairs, held against two other roads: a table over all frontiers (dynamic
 * programming, exact, for every way to share a grid among five prints) on every grid up to 4×5, and
 * HiGHS, a mixed-integer solver, on an assignment formulation of a seeded sample.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, inject, test } from 'vitest';
import { LAYOUT_EFFORT } from '#core/layout/effort.ts';
import { solveLayout } from '#core/layout/solve-layout.ts';
import { countTouch } from '../support/boards.ts';
import { fewestByFrontier } from '../support/fewest-by-frontier.ts';
import { fewestByModel } from '../support/fewest-by-model.ts';

/** As `/v1/layout` works, without spreading what is found. */
const EFFORT = { ...LAYOUT_EFFORT, spread: 0 };
const PRINTS = 5;

const GRIDS = [1, 2, 3, 4].flatMap((columns) =>
  [1, 2, 3, 4, 5].filter((rows) => rows >= columns).map((rows) => [columns, rows] as const),
);

describe.each(['corners', 'sides'] as const)('solveLayout (%s)', (touch) => {
  test.each(GRIDS)(
    'solveLayout on %i×%i and turned finds and proves the fewest, for all counts of up to five prints',
    { timeout: 60_000 },
    (columns, rows) => {
      for (const [key, fewest] of fewestByFrontier({ columns, rows }, PRINTS, touch)) {
        const counts = key.split(',').map(Number);
        for (const grid of [
          { columns, rows },
          { columns: rows, rows: columns },
        ]) {
          const solved = solveLayout({ grid, counts, touch, seed: 1 }, EFFORT);
          const found = countTouch(solved.cells, touch);
          expect([grid, key, found, solved.fewest]).toEqual([grid, key, fewest, fewest]);
        }
      }
    },
  );

  test('solveLayout agrees with HiGHS on small grids with pins, up to four prints', {
    timeout: 60_000,
  }, async () => {
    const highs = await loadHighs();
    const tasks = fc
      .record({
        columns: fc.integer({ min: 2, max: 4 }),
        rows: fc.integer({ min: 2, max: 4 }),
        picks: fc.array(fc.nat({ max: 3 }), { minLength: 16, maxLength: 16 }),
        pinned: fc.array(fc.nat({ max: 3 }), { minLength: 16, maxLength: 16 }),
      })
      .map(({ columns, rows, picks, pinned }) => {
        const letters = picks.slice(0, columns * rows).map((pick) => 'ABCD'[pick] ?? 'A');
        const counts = [...'ABCD'].map((own) => letters.filter((letter) => letter === own).length);
        const pins = letters.map((letter, at) => (pinned[at] === 0 ? letter : '.'));
        const fixed = Array.from({ length: rows }, (_, row) =>
          pins.slice(row * columns, (row + 1) * columns).join(''),
        );
        return { grid: { columns, rows }, counts, touch, seed: 1, fixed };
      });
    for (const task of fc.sample(tasks, { numRuns: 25, seed: inject('seed') })) {
      const solved = solveLayout(task, EFFORT);
      const fewest = fewestByModel(highs, task);
      expect([task, countTouch(solved.cells, touch), solved.fewest]).toEqual([
        task,
        fewest,
        fewest,
      ]);
    }
  });
});
