import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listPatterns } from '#core/cloth/strips/list-patterns.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { listStrips } from '../../../support/pattern-model.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

const ALL = { excess: Number.POSITIVE_INFINITY, most: 10_000 } as const;

describe('listPatterns', () => {
  test('listPatterns(three sizes by hand) lists the full strips of each height', () => {
    const patterns = listPatterns(problemOf(BY_HAND), {
      ...ALL,
      prices: [0, 0, 0],
      budget: { steps: 1e5 },
    });
    const low = patterns?.filter(({ level }) => level <= 1).map(({ counts }) => counts);
    expect(low).toEqual([
      [0, 0, 5],
      [3, 0, 0],
      [2, 0, 2],
      [1, 0, 3],
    ]);
  });

  test('listPatterns within an excess lists every full strip of the model that is within it', () => {
    const cases = stripCases({ ...FAMILIES.centimetres, least: 12 }, { min: 1, max: 4 });
    fc.assert(
      fc.property(cases, fc.integer({ min: 0, max: 100 }), (one, excess) => {
        const problem = problemOf(one);
        const { prices } = solveRelaxation(problem, { steps: 1e6 });
        const search = { prices, excess: excess + 1e-6, most: 10_000, budget: { steps: 1e6 } };
        const listed = new Set(
          listPatterns(problem, search)?.map(
            ({ level, counts }) => `${problem.levels[level]?.height}:${counts.join()}`,
          ),
        );
        const worth = (counts: readonly number[]) =>
          counts.reduce((sum, count, kind) => sum + count * (prices[kind] ?? 0), 0);
        // A strip whose pieces a lower one holds as well is not listed at the taller height.
        const lowest = new Map<string, number>();
        for (const { height, counts } of listStrips(one)) {
          const key = counts.join();
          lowest.set(key, Math.min(height, lowest.get(key) ?? Number.POSITIVE_INFINITY));
        }
        for (const [key, height] of lowest) {
          const counts = key.split(',').map(Number);
          if (height - worth(counts) > excess) continue;
          expect(listed).toContain(`${height}:${key}`);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('listPatterns gives nothing where there are too many, or steps end', () => {
    const search = { ...ALL, prices: [0, 0, 0] };
    const problem = problemOf(BY_HAND);
    expect(listPatterns(problem, { ...search, most: 3, budget: { steps: 1e5 } })).toBeUndefined();
    expect(listPatterns(problem, { ...search, budget: { steps: 5 } })).toBeUndefined();
  });
});
