/**
 * The least length of several sizes on a roll against HiGHS, a mixed-integer solver, on the pattern
 * formulation (Gilmore and Gomory, 1961) with every strip written down; small cases against a search
 * over every way to take strip after strip; one size against dynamic programming.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { deepFreeze } from '../support/deep-freeze.ts';
import { leastByPieces, listStrips, solveStrips } from '../support/pattern-model.ts';
import type { Highs } from '../support/solve-model.ts';
import { FAMILIES, type StripCase, type StripFamily, stripCases } from '../support/strip-cases.ts';

/** Cases of each family; larger pieces than the families', so that the other solver keeps up. */
const CASES = 60;
const LIMIT = 600;
const SECONDS = 5;

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

function draw(family: StripFamily): readonly StripCase[] {
  const cases = stripCases({ ...family, least: 2 * family.least }, { min: 2, max: 6 })
    .filter((one) => listStrips(one).length <= LIMIT)
    .map(deepFreeze);
  return fc.sample(cases, { numRuns: CASES, seed: inject('seed') });
}

describe('leastStrips', () => {
  test('leastStrips agrees with HiGHS on more than 140 cases of 2 to 6 kinds', () => {
    let agreed = 0;
    let proven = 0;
    for (const family of Object.values(FAMILIES)) {
      for (const one of draw(family)) {
        const ours = leastStrips(one.kinds, one.usable);
        const least = solveStrips(highs, one, { unit: family.unit, seconds: SECONDS });
        if (least === undefined) continue;
        if (ours.optimal) {
          expect(ours.length / family.unit).toBeCloseTo(least, 3);
          proven += 1;
        } else {
          expect(ours.length / family.unit).toBeGreaterThan(least - 1e-3);
          expect(ours.bound / family.unit).toBeLessThan(least + 1e-3);
        }
        agreed += 1;
      }
    }
    expect(agreed).toBeGreaterThan(140);
    expect(proven / agreed).toBeGreaterThan(0.97);
  }, 180_000);

  test('leastStrips agrees with every way to take strip after strip, for up to 10 pieces', () => {
    const small = stripCases(FAMILIES.centimetres, { min: 2, max: 3 }).map(({ kinds, usable }) => ({
      usable,
      kinds: kinds.map((kind) => ({ ...kind, count: 1 + (kind.count % 3) })),
    }));
    fc.assert(
      fc.property(small, (one) => {
        const ours = leastStrips(one.kinds, one.usable);
        expect(ours.optimal).toBe(true);
        expect(ours.length).toBeCloseTo(leastByPieces(one), 6);
      }),
      { numRuns: 200 },
    );
  });

  test('leastStrips of one size agrees with dynamic programming, for 1 to 30 pieces', () => {
    fc.assert(
      fc.property(stripCases(FAMILIES.centimetres, { min: 1, max: 1 }), ({ kinds, usable }) => {
        const least = leastOfOne({ kinds, usable }, 30);
        for (let count = 1; count <= 30; count += 1) {
          const one = kinds.map((kind) => ({ ...kind, count }));
          expect(leastStrips(one, usable).length).toBeCloseTo(least[count] ?? Number.NaN, 6);
        }
      }),
      { numRuns: 50 },
    );
  });
});

/** Every strip of some pieces upright and some turned; the least of them for each number of pieces. */
function leastOfOne({ kinds, usable }: StripCase, most: number): readonly number[] {
  const { across = 1, along = 1, canTurn = false } = kinds[0] ?? {};
  const strips: { readonly held: number; readonly height: number }[] = [];
  for (let upright = 0; upright * across <= usable + 1e-6; upright += 1) {
    for (let turned = 0; upright * across + turned * along <= usable + 1e-6; turned += 1) {
      if (upright + turned === 0 || (turned > 0 && !canTurn)) continue;
      const height = Math.max(upright > 0 ? along : 0, turned > 0 ? across : 0);
      strips.push({ held: upright + turned, height });
    }
  }
  const least = [0];
  for (let pieces = 1; pieces <= most; pieces += 1) {
    const totals = strips.map(
      ({ held, height }) => height + (least[Math.max(0, pieces - held)] ?? 0),
    );
    least.push(Math.min(...totals));
  }
  return least;
}
