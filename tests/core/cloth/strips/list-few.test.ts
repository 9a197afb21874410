import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listFew } from '#core/cloth/strips/list-few.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

describe('listFew', () => {
  test('listFew lists no more than asked, none beyond the excess', () => {
    fc.assert(
      fc.property(stripCases(FAMILIES['half inches'], { min: 1, max: 8 }), (one) => {
        const problem = problemOf(one);
        const relaxation = solveRelaxation(problem, { steps: 1e5 });
        const few = listFew(problem, relaxation, {
          excess: 100,
          most: 30,
          allowance: { steps: 1e6 },
        });
        expect(few.length).toBeLessThanOrEqual(30);
        for (const { level, counts } of few) {
          const worth = counts.reduce(
            (sum, count, kind) => sum + count * (relaxation.prices[kind] ?? 0),
            0,
          );
          expect((problem.levels[level]?.height ?? 0) - worth).toBeLessThanOrEqual(100 + 1e-6);
        }
      }),
    );
  });

  test('listFew of no excess is empty', () => {
    const one = { kinds: [{ across: 30, along: 20, count: 3, canTurn: false }], usable: 100 };
    expect(
      listFew(problemOf(one), { prices: [0] }, { excess: 0, most: 30, allowance: { steps: 1e6 } }),
    ).toEqual([]);
  });
});
