import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countChains } from '#core/sewing/count-chains.ts';

const grid = fc.record({
  columns: fc.integer({ min: 1, max: 50 }),
  rows: fc.integer({ min: 1, max: 50 }),
});
const manner = fc.record({
  chained: fc.boolean(),
  borderPasses: fc.integer({ min: 1, max: 6 }),
});

describe('countChains', () => {
  test('countChains(3×2, chained) is two diagonals of 6, two rows of 2, one row seam, two rounds', () => {
    expect(countChains({ columns: 3, rows: 2 }, { chained: true, borderPasses: 2 })).toEqual([
      { step: 'quilt-first', chains: 1, seams: 6 },
      { step: 'quilt-second', chains: 1, seams: 6 },
      { step: 'join', chains: 2, seams: 2 },
      { step: 'join-rows', chains: 1, seams: 1 },
      { step: 'border', chains: 2, seams: 1 },
    ]);
  });

  test('countChains leaves out what a lone block does not have', () => {
    const steps = countChains({ columns: 1, rows: 1 }, { chained: true, borderPasses: 1 });
    expect(steps.map(({ step }) => step)).toEqual(['quilt-first', 'quilt-second', 'border']);
  });

  test('countChains: seams of the chains of a step sum to the seams of the step, chained or not', () => {
    fc.assert(
      fc.property(grid, manner, (cells, how) => {
        const { columns, rows } = cells;
        const seams = new Map(
          countChains(cells, how).map((run) => [run.step, run.chains * run.seams]),
        );
        expect(seams.get('quilt-first')).toBe(columns * rows);
        expect(seams.get('quilt-second')).toBe(columns * rows);
        expect(seams.get('join') ?? 0).toBe(rows * (columns - 1));
        expect(seams.get('join-rows') ?? 0).toBe(rows - 1);
        expect(seams.get('border')).toBe(how.borderPasses);
        if (how.chained) return;
        expect(countChains(cells, how).every((run) => run.seams === 1)).toBe(true);
      }),
    );
  });
});
