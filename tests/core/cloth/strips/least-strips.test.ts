import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { deepFreeze } from '../../../support/deep-freeze.ts';
import { expectWhole } from '../../../support/expect-whole.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

const cases = fc
  .constantFrom(...Object.values(FAMILIES))
  .chain((family) => stripCases(family, { min: 1, max: 5 }))
  .map(deepFreeze);
const RUNS = { numRuns: 60 };

describe('leastStrips', () => {
  test('leastStrips(three sizes by hand) is 55: 25 with two pieces of 20 beside, 20, and 10 for the rest', () => {
    const { length, bound, optimal } = leastStrips(BY_HAND.kinds, BY_HAND.usable);
    expect({ length, bound, optimal }).toEqual({ length: 55, bound: 55, optimal: true });
  });

  test('leastStrips holds every piece within the width, at a length no less than the area', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { strips, length, bound, optimal } = leastStrips(one.kinds, one.usable);
        expectWhole(problemOf(one), strips);
        expect(bound).toBeLessThanOrEqual(length);
        expect(optimal).toBe(bound === length);
        const area = one.kinds.reduce(
          (sum, kind) => sum + kind.across * kind.along * kind.count,
          0,
        );
        expect(bound).toBeGreaterThan(area / one.usable - 1e-3);
      }),
      RUNS,
    );
  });

  test('leastStrips never needs more than each size cut by itself', () => {
    fc.assert(
      fc.property(cases, ({ kinds, usable }) => {
        const apart = kinds.reduce((sum, kind) => sum + leastStrips([kind], usable).length, 0);
        expect(leastStrips(kinds, usable).length).toBeLessThanOrEqual(apart + 1e-6);
      }),
      RUNS,
    );
  });

  test('leastStrips from a wider roll, or of a piece fewer, never needs more where both are proven', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 400 }), ({ kinds, usable }, wider) => {
        const plan = leastStrips(kinds, usable);
        const wide = leastStrips(kinds, usable + wider);
        const fewer = leastStrips(
          kinds.map((kind, at) =>
            at === 0 && kind.count > 1 ? { ...kind, count: kind.count - 1 } : kind,
          ),
          usable,
        );
        for (const other of [wide, fewer]) {
          expect(other.bound).toBeLessThanOrEqual(plan.length + 1e-6);
          if (other.optimal) expect(other.length).toBeLessThanOrEqual(plan.length + 1e-6);
        }
      }),
      RUNS,
    );
  });

  test('leastStrips of pieces that may be turned never needs more than of pieces that may not', () => {
    fc.assert(
      fc.property(cases, ({ kinds, usable }) => {
        const free = leastStrips(
          kinds.map((kind) => ({ ...kind, canTurn: true })),
          usable,
        );
        const bound = leastStrips(
          kinds.map((kind) => ({ ...kind, canTurn: false })),
          usable,
        );
        expect(free.bound).toBeLessThanOrEqual(bound.length + 1e-6);
      }),
      RUNS,
    );
  });

  test('leastStrips does not depend on the order of the sizes where it is proven, and repeats itself', () => {
    fc.assert(
      fc.property(cases, ({ kinds, usable }) => {
        const plan = leastStrips(kinds, usable);
        expect(leastStrips(kinds, usable)).toEqual(plan);
        const turned = leastStrips(kinds.toReversed(), usable);
        if (plan.optimal && turned.optimal) expect(turned.length).toBeCloseTo(plan.length, 6);
      }),
      RUNS,
    );
  });

  test('leastStrips of sides with no step in common is proven too', () => {
    const third = 254 / 3;
    const kinds = [
      { across: third, along: third, count: 7, canTurn: true },
      { across: 200, along: 3 * third + 0.123_45, count: 2, canTurn: true },
    ];
    const { length, optimal } = leastStrips(kinds, 1000);
    // Two upright are 400 wide, seven beside them 592.7; lying down they would need a second strip.
    expect(optimal).toBe(true);
    expect(length).toBeCloseTo(3 * third + 0.123_45, 3);
  });

  test('leastStrips of 24 sizes ends within its steps, with a bound below the plan', () => {
    fc.assert(
      fc.property(stripCases(FAMILIES.eighths, { min: 24, max: 24 }), (one) => {
        const { strips, length, bound } = leastStrips(one.kinds, one.usable);
        expectWhole(problemOf(one), strips);
        expect(length).toBeLessThan(1.3 * bound);
      }),
      { numRuns: 10 },
    );
  });
});
