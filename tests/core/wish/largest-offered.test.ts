import { describe, expect, test } from 'vitest';
import type { PlanLayer } from '#core/contract.ts';
import { usableCuts } from '#core/wish/check-block.ts';
import { largestOffered, listOfferedPieces } from '#core/wish/largest-offered.ts';
import { planFor, understandPlan } from '../../support/plans.ts';

const SQUARES = { kind: 'pieces', id: 'squares', width: 10, length: 10, count: 42 } as const;
const QUARTER = { kind: 'pieces', id: 'quarter', width: 21, length: 9, count: 1 } as const;

function inputOf(top: Partial<PlanLayer>, backing: Partial<PlanLayer> = {}) {
  const layers = [
    { role: 'top', ...top },
    { role: 'backing', ...backing },
  ] as const;
  return understandPlan({ target: { width: 40, height: 50 }, layers }).input;
}

describe('largestOffered', () => {
  test('largestOffered is the largest square of the layer that has the smallest', () => {
    expect(largestOffered(inputOf({}))).toBe(Number.POSITIVE_INFINITY);
    expect(largestOffered(inputOf({ offers: [SQUARES, QUARTER] }))).toBeCloseTo(254, 9);
    const both = inputOf({ offers: [SQUARES] }, { offers: [QUARTER] });
    expect(largestOffered(both)).toBeCloseTo(228.6, 9);
  });

  test('largestOffered is without end where a roll is on offer too', () => {
    const offers = [SQUARES, { kind: 'roll', id: 'bolt' }] as const;
    expect(largestOffered(inputOf({ offers }))).toBe(Number.POSITIVE_INFINITY);
  });

  test('largestOffered bounds the cuts that are considered, and so the plan', () => {
    expect(usableCuts(inputOf({ offers: [SQUARES] })).at(-1)).toBe(10);
    const layers = [{ role: 'top', offers: [QUARTER] }, { role: 'backing' }] as const;
    const { options, fabrics } = planFor({ target: { width: 60, height: 80 }, layers });
    for (const { cut } of options) expect(cut).toBeLessThanOrEqual(9);
    expect(fabrics[0]).not.toHaveProperty('lacking');
  });
});

describe('listOfferedPieces', () => {
  test('listOfferedPieces gives the sides after a prewash, by layer', () => {
    const washed = { prewashed: true, shrink: { length: 5, width: 10 } };
    const [none, top] = [
      listOfferedPieces(inputOf({})),
      listOfferedPieces(inputOf({ ...washed, offers: [{ kind: 'roll', id: 'bolt' }, QUARTER] })),
    ];
    expect(none).toEqual([]);
    expect(top.map((pieces) => pieces.map(({ at }) => at))).toEqual([[1], []]);
    expect(top[0]?.[0]?.width).toBeCloseTo(21 * 25.4 * 0.9, 9);
    expect(top[0]?.[0]?.length).toBeCloseTo(9 * 25.4 * 0.95, 9);
  });
});
