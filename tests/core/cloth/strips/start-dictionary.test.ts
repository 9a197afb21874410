import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { settleDictionary } from '#core/cloth/strips/dictionary.ts';
import { listPatterns } from '#core/cloth/strips/list-patterns.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { startDictionary } from '#core/cloth/strips/start-dictionary.ts';
import { startProgramme } from '#core/cloth/strips/start-programme.ts';
import { FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

describe('startDictionary', () => {
  test('startDictionary is settled already, at what a programme over the same patterns comes to', () => {
    const cases = stripCases({ ...FAMILIES['half inches'], least: 8 }, { min: 1, max: 4 });
    fc.assert(
      fc.property(cases, (one) => {
        const problem = problemOf(one);
        const relaxation = solveRelaxation(problem, { steps: 1e6 });
        const { prices, basis, bound } = relaxation;
        const search = { prices, excess: 60, most: 2000, budget: { steps: 1e6 } };
        const patterns = [
          ...(listPatterns(problem, search) ?? []),
          ...basis.flatMap(({ pattern }) => (pattern === undefined ? [] : [pattern])),
        ];
        const dictionary = startDictionary(problem, relaxation, patterns);
        expect(Math.min(...dictionary.amounts)).toBeGreaterThan(-1e-7);
        expect(Math.min(...dictionary.costs)).toBeGreaterThanOrEqual(0);
        const programme = startProgramme(
          patterns.map(({ level, counts }) => ({
            cost: problem.levels[level]?.height ?? 0,
            gives: counts,
          })),
          problem.demand,
        );
        settleDictionary(programme, Number.POSITIVE_INFINITY, { steps: 1e7 });
        expect(dictionary.cost).toBe(bound);
        expect(programme.cost).toBeCloseTo(bound, 4);
      }),
      { numRuns: 60 },
    );
  });
});
