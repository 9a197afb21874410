import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestAlone, fillAlone } from '#core/cloth/strips/best-alone.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

describe('fillAlone', () => {
  test('fillAlone fills a strip as far as width and wants go, and not where the kind does not fit', () => {
    const problem = problemOf(BY_HAND);
    expect(fillAlone(problem, 1, 0)).toEqual({ level: 1, counts: [3, 0, 0] });
    expect(fillAlone(problem, 3, 1)).toEqual({ level: 3, counts: [0, 2, 0] });
    expect(fillAlone(problem, 0, 1)).toEqual({ level: 0, counts: [0, 0, 0] });
  });
});

describe('bestAlone', () => {
  test('bestAlone(45 mm of three sizes by hand) takes the kind with most cloth', () => {
    const areas = BY_HAND.kinds.map(({ across, along }) => across * along);
    // 3 of 600, 2 of 1000, 5 of 200.
    expect(bestAlone(problemOf(BY_HAND), areas, 45)).toEqual([0, 2, 0]);
    expect(bestAlone(problemOf(BY_HAND), areas, 24)).toEqual([3, 0, 0]);
    expect(bestAlone(problemOf(BY_HAND), areas, 9)).toEqual([0, 0, 0]);
  });

  test('bestAlone of one size needs no more than the room, and one more piece would', () => {
    const cases = stripCases(FAMILIES.eighths, { min: 1, max: 1 });
    fc.assert(
      fc.property(cases, fc.integer({ min: 10, max: 3000 }), (one, room) => {
        const [most = 0] = bestAlone(problemOf(one), [1], room);
        const lengthOf = (count: number) =>
          count === 0
            ? 0
            : leastStrips(
                one.kinds.map((kind) => ({ ...kind, count })),
                one.usable,
              ).length;
        expect(lengthOf(most)).toBeLessThanOrEqual(room + 1e-3);
        if (most < (one.kinds[0]?.count ?? 0)) expect(lengthOf(most + 1)).toBeGreaterThan(room);
      }),
    );
  });
});
