import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { listStrips } from '../../../support/pattern-model.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

const cases = stripCases({ ...FAMILIES.centimetres, least: 10 }, { min: 1, max: 5 });

describe('solveRelaxation', () => {
  test('solveRelaxation(three sizes by hand) is proven by its prices', () => {
    const { bound, prices, isSolved } = solveRelaxation(problemOf(BY_HAND), { steps: 1e5 });
    expect(isSolved).toBe(true);
    const worth = BY_HAND.kinds.reduce(
      (sum, { count }, kind) => sum + count * (prices[kind] ?? 0),
      0,
    );
    expect(bound).toBeCloseTo(worth, 9);
    // One strip of 25 with 2 of 40 and 1 of 20, one of 20 with 3 of 30, most of one of 10: 53 at most.
    expect(bound).toBeLessThanOrEqual(55);
    expect(bound).toBeGreaterThan(45);
  });

  test('solveRelaxation gives prices at which no strip is worth more than its height', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { prices } = solveRelaxation(problemOf(one), { steps: 1e6 });
        for (const { height, counts } of listStrips(one)) {
          const worth = counts.reduce((sum, count, kind) => sum + count * (prices[kind] ?? 0), 0);
          expect(worth).toBeLessThanOrEqual(height * (1 + 1e-6));
        }
      }),
      { numRuns: 40 },
    );
  });

  test('solveRelaxation uses its patterns so often that they come to the bound and place all', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const problem = problemOf(one);
        const { basis, amounts, bound } = solveRelaxation(problem, { steps: 1e6 });
        let length = 0;
        const placed = problem.demand.map(() => 0);
        for (const [row, { pattern }] of basis.entries()) {
          if (pattern === undefined) continue;
          const times = amounts[row] ?? 0;
          length += times * (problem.levels[pattern.level]?.height ?? 0);
          for (const [kind, count] of pattern.counts.entries()) {
            placed[kind] = (placed[kind] ?? 0) + times * count;
          }
        }
        expect(length / bound).toBeCloseTo(1, 6);
        for (const [kind, count] of placed.entries()) {
          expect(count).toBeGreaterThan((problem.demand[kind] ?? 0) - 1e-6);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('solveRelaxation out of steps still proves a bound below the solved one', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 60 }), (one, steps) => {
        const early = solveRelaxation(problemOf(one), { steps });
        const solved = solveRelaxation(problemOf(one), { steps: 1e6 });
        expect(early.bound).toBeLessThanOrEqual(solved.bound * (1 + 1e-6));
      }),
      { numRuns: 100 },
    );
  });
});
