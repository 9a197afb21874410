import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { heightOf, trimPlan } from '#core/cloth/strips/trim-plan.ts';
import { BY_HAND, FAMILIES, problemOf, stripCases } from '../../../support/strip-cases.ts';

describe('trimPlan', () => {
  test('trimPlan leaves out what is too many, lowers a strip to its tallest piece, groups alike', () => {
    const { levels } = problemOf(BY_HAND);
    const cut = trimPlan(BY_HAND.kinds, levels, [
      { pattern: { level: 2, counts: [0, 1, 3] }, times: 3 },
      { pattern: { level: 1, counts: [3, 0, 0] }, times: 2 },
    ]);
    expect(cut).toEqual([
      {
        times: 1,
        height: 25,
        used: 100,
        pieces: [
          { kind: 1, count: 1, turned: false },
          { kind: 2, count: 3, turned: false },
        ],
      },
      {
        times: 1,
        height: 25,
        used: 80,
        pieces: [
          { kind: 1, count: 1, turned: false },
          { kind: 2, count: 2, turned: false },
        ],
      },
      { times: 1, height: 20, used: 90, pieces: [{ kind: 0, count: 3, turned: false }] },
    ]);
  });

  test('trimPlan cuts exactly the pieces wanted, each in a strip that holds it', () => {
    fc.assert(
      fc.property(stripCases(FAMILIES['half inches'], { min: 1, max: 7 }), ({ kinds, usable }) => {
        const { levels, strips, length } = leastStrips(kinds, usable);
        const cut = trimPlan(kinds, levels, strips);
        const placed = kinds.map(() => 0);
        for (const { times, height, pieces, used } of cut) {
          let width = 0;
          let tallest = 0;
          for (const { kind, count, turned } of pieces) {
            const { across = 0, along = 0, canTurn = false } = kinds[kind] ?? {};
            expect(turned && !canTurn).toBe(false);
            width += count * (turned ? along : across);
            tallest = Math.max(tallest, turned ? across : along);
            placed[kind] = (placed[kind] ?? 0) + times * count;
          }
          expect(height).toBe(tallest);
          expect(used).toBeCloseTo(width, 9);
          expect(used).toBeLessThanOrEqual(usable + 1e-4);
        }
        expect(placed).toEqual(kinds.map(({ count }) => count));
        expect(heightOf(cut)).toBeLessThanOrEqual(length + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('heightOf', () => {
  test('heightOf(no strips) is 0', () => {
    expect(heightOf([])).toBe(0);
  });
});
