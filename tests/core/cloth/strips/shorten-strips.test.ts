import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pileStrips } from '#core/cloth/strips/pile-strips.ts';
import { shortenStrips } from '#core/cloth/strips/shorten-strips.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { lengthOf } from '#core/cloth/strips/strip-plan.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { FAMILIES, problemOf, type StripCase, stripCases } from '../../../support/strip-cases.ts';

/** A plan of no art, and the bound of the relaxation. */
function start(one: StripCase) {
  const problem = problemOf(one);
  const relaxation = solveRelaxation(problem, { steps: 1e6 });
  const strips = pileStrips(
    problem,
    problem.demand.map(() => 0),
    { steps: 1e6 },
  );
  const from = { strips, length: lengthOf(problem.levels, strips), bound: relaxation.bound };
  return { problem, relaxation, from };
}

describe('shortenStrips', () => {
  test('shortenStrips never lengthens a plan, keeps its bound, and often finds a shorter one', () => {
    let shorter = 0;
    fc.assert(
      fc.property(stripCases(FAMILIES.eighths, { min: 3, max: 8 }), (one) => {
        const { problem, relaxation, from } = start(one);
        const effort = { search: 5000, patterns: 150 };
        const plan = shortenStrips(problem, relaxation, {
          from,
          effort,
          allowance: { steps: 1e8 },
        });
        expectWhole(problem, plan.strips);
        expect(plan.length).toBeLessThanOrEqual(from.length);
        expect(plan.bound).toBe(from.bound);
        if (plan.length < from.length - 1) shorter += 1;
      }),
      { numRuns: 50 },
    );
    expect(shorter).toBeGreaterThan(25);
  });
});
