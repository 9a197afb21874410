import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundStrips, usedPatterns } from '#core/cloth/strips/round-strips.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { lengthOf } from '#core/cloth/strips/strip-plan.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

const cases = stripCases(FAMILIES.eighths, { min: 1, max: 8 });

describe('usedPatterns', () => {
  test('usedPatterns leaves surpluses out', () => {
    const relaxation = solveRelaxation(problemOf(BY_HAND), { steps: 1e5 });
    const pattern = { level: 0, counts: [0, 0, 5] };
    const basis = [{ pattern }, { surplus: 1 }];
    expect(usedPatterns({ ...relaxation, basis, amounts: [1.5, 2] })).toEqual([
      { pattern, times: 1.5 },
    ]);
  });
});

describe('roundStrips', () => {
  test('roundStrips places every piece, and is no shorter than the relaxation', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const problem = problemOf(one);
        const relaxation = solveRelaxation(problem, { steps: 1e5 });
        const strips = roundStrips(problem, relaxation, { steps: 1e5 });
        expectWhole(problem, strips);
        expect(lengthOf(problem.levels, strips)).toBeGreaterThan(relaxation.bound - 1e-3);
        expect(lengthOf(problem.levels, usedPatterns(relaxation))).toBeCloseTo(relaxation.bound, 3);
      }),
    );
  });
});
