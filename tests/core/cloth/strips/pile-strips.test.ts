import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pileStrips } from '#core/cloth/strips/pile-strips.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

const cases = stripCases(FAMILIES.eighths, { min: 1, max: 8 });

describe('pileStrips', () => {
  test('pileStrips(three sizes by hand) opens with the tallest, and fills up by worth', () => {
    const problem = problemOf(BY_HAND);
    expect(pileStrips(problem, [600, 1000, 200], { steps: 1e4 })).toEqual([
      { pattern: { level: 2, counts: [0, 2, 1] }, times: 1 },
      { pattern: { level: 1, counts: [3, 0, 0] }, times: 1 },
      { pattern: { level: 0, counts: [0, 0, 4] }, times: 1 },
    ]);
  });

  test('pileStrips places every piece within the width, whatever the worth and the steps', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 500 }), (one, steps) => {
        const problem = problemOf(one);
        const areas = one.kinds.map(({ across, along }) => across * along);
        expectWhole(problem, pileStrips(problem, areas, { steps }));
        expectWhole(
          problem,
          pileStrips(
            problem,
            areas.map(() => 0),
            { steps: 1e5 },
          ),
        );
      }),
    );
  });
});
