import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listPatterns } from '#core/cloth/strips/list-patterns.ts';
import { searchStrips } from '#core/cloth/strips/search-strips.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { lengthOf } from '#core/cloth/strips/strip-plan.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { leastByPieces } from '../../../support/pattern-model.ts';
import { FAMILIES, problemOf, type StripCase, stripCases } from '../../../support/strip-cases.ts';

const small = stripCases(FAMILIES.centimetres, { min: 1, max: 3 }).map(
  ({ kinds, usable }): StripCase => ({
    usable,
    kinds: kinds.map((kind) => ({ ...kind, count: 1 + (kind.count % 3) })),
  }),
);

/** All patterns, so that the search knows everything. */
function search(one: StripCase, target: number) {
  const problem = problemOf(one);
  const relaxation = solveRelaxation(problem, { steps: 1e6 });
  const listing = { excess: 1e6, most: 1e4, budget: { steps: 1e6 } };
  const patterns = listPatterns(problem, { ...listing, prices: relaxation.prices }) ?? [];
  const budget = { steps: 1e6 };
  return searchStrips(problem, relaxation, { patterns, target, step: 10, bound: 0, budget });
}

describe('searchStrips', () => {
  test('searchStrips of all patterns finds the least length that a search piece by piece finds', () => {
    fc.assert(
      fc.property(small, (one) => {
        const problem = problemOf(one);
        const least = leastByPieces(one);
        const { strips = [], isComplete } = search(one, 1e6);
        expect(isComplete).toBe(true);
        expectWhole(problem, strips);
        expect(lengthOf(problem.levels, strips)).toBeCloseTo(least, 6);
        expect(search(one, least - 10)).toEqual({ isComplete: true });
      }),
    );
  });
});
