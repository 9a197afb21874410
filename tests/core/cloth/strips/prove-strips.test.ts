import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pileStrips } from '#core/cloth/strips/pile-strips.ts';
import { proveStrips } from '#core/cloth/strips/prove-strips.ts';
import { solveRelaxation } from '#core/cloth/strips/solve-relaxation.ts';
import { lengthOf } from '#core/cloth/strips/strip-plan.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { leastByPieces } from '../../../support/pattern-model.ts';
import { FAMILIES, problemOf, type StripCase, stripCases } from '../../../support/strip-cases.ts';

const EFFORT = { list: 1e5, search: 1e6, patterns: 5000 } as const;
const small = stripCases(FAMILIES.centimetres, { min: 1, max: 3 }).map(
  ({ kinds, usable }): StripCase => ({
    usable,
    kinds: kinds.map((kind) => ({ ...kind, count: 1 + (kind.count % 3) })),
  }),
);

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

describe('proveStrips', () => {
  test.each([10, 0])('proveStrips(a step of %d mm) closes the gap at the least length', (step) => {
    fc.assert(
      fc.property(small, (one) => {
        const { problem, relaxation, from } = start(one);
        const proof = proveStrips(problem, relaxation, {
          from,
          step,
          effort: EFFORT,
          allowance: { steps: 1e8 },
        });
        const least = leastByPieces(one);
        expectWhole(problem, proof.strips);
        expect(proof.length).toBeCloseTo(least, 2);
        expect(proof.bound).toBeCloseTo(least, 2);
      }),
    );
  });

  test('proveStrips out of steps gives back a plan, and a bound that still holds', () => {
    fc.assert(
      fc.property(small, fc.integer({ min: 1, max: 300 }), (one, search) => {
        const { problem, relaxation, from } = start(one);
        const effort = { ...EFFORT, search };
        const proof = proveStrips(problem, relaxation, {
          from,
          step: 10,
          effort,
          allowance: { steps: 1e8 },
        });
        expectWhole(problem, proof.strips);
        expect(proof.length).toBeLessThanOrEqual(from.length);
        expect(proof.bound).toBeLessThanOrEqual(leastByPieces(one) + 1e-6);
        expect(proof.bound).toBeGreaterThanOrEqual(from.bound - 1e-6);
      }),
    );
  });
});
