import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureSpread } from '#core/layout/measure-spread.ts';
import { solveLayout } from '#core/layout/solve-layout.ts';
import { anyTask, countTouch, keepsPins } from '../../support/boards.ts';
import { equalCounts, tallyPrints } from '../../support/layouts.ts';

const effort = { begin: 50_000, repair: 50_000, spread: 50, search: 50_000, work: 5_000_000 };

describe('solveLayout', () => {
  test('solveLayout meets counts and pins, never below what it proves, the same each time', () => {
    fc.assert(
      fc.property(anyTask(7), (task) => {
        const { cells, fewest } = solveLayout(task, effort);
        expect(tallyPrints(cells, task.counts.length)).toEqual(task.counts);
        expect(keepsPins(cells, task.fixed)).toBe(true);
        expect(countTouch(cells, task.touch)).toBeGreaterThanOrEqual(fewest);
        expect(solveLayout(task, effort)).toEqual({ cells, fewest });
      }),
      { numRuns: 60 },
    );
  });

  test('solveLayout with fewer pins never touches more, where both are proven', () => {
    fc.assert(
      fc.property(anyTask(4), (task) => {
        const free = { grid: task.grid, counts: task.counts, touch: task.touch, seed: task.seed };
        const [pinned, loose] = [solveLayout(task, effort), solveLayout(free, effort)];
        expect(countTouch(pinned.cells, task.touch)).toBe(pinned.fewest);
        expect(countTouch(loose.cells, task.touch)).toBe(loose.fewest);
        expect(loose.fewest).toBeLessThanOrEqual(pinned.fewest);
      }),
      { numRuns: 60 },
    );
  });

  test('solveLayout at sides never touches more than at sides and corners', () => {
    fc.assert(
      fc.property(anyTask(4, false), (task) => {
        const corners = solveLayout({ ...task, touch: 'corners' }, effort);
        const sides = solveLayout({ ...task, touch: 'sides' }, effort);
        expect(sides.fewest).toBeLessThanOrEqual(corners.fewest);
      }),
      { numRuns: 60 },
    );
  });

  test.each([
    [12, 12, 8],
    [20, 20, 12],
    [13, 17, 9],
    [10, 12, 7],
    [20, 20, 5],
  ])(
    'solveLayout(%i×%i, %i prints alike) brings each row and column within one of the fair share',
    (columns, rows, prints) => {
      const counts = equalCounts(columns * rows, prints);
      const task = { grid: { columns, rows }, counts, touch: 'corners', seed: 1 } as const;
      const { cells } = solveLayout(task, { ...effort, spread: 140 });
      expect(countTouch(cells, 'corners')).toBe(0);
      for (const print of counts.keys()) {
        const spread = measureSpread(cells, print);
        expect(Math.max(spread.rows, spread.columns)).toBeLessThanOrEqual(1);
        expect(spread.centre).toBeLessThanOrEqual(1.5);
      }
    },
  );

  test('solveLayout of another seed lays another layout', () => {
    const counts = equalCounts(64, 6);
    const task = { grid: { columns: 8, rows: 8 }, counts, touch: 'corners' } as const;
    const laid = [1, 2, 3, 4].map((seed) => solveLayout({ ...task, seed }, effort).cells.join());
    expect(new Set(laid).size).toBe(4);
  });
});
