import { describe, expect, test } from 'vitest';
import { type CoverEffort, proveCover } from '#core/cloth/offers/prove-cover.ts';
import { relaxCover } from '#core/cloth/offers/relax-cover.ts';
import { coverByHand } from '../../../support/covers.ts';

const EFFORT: CoverEffort = { list: 1e5, search: 1e6, patterns: 2000 };

function prove(below: number, effort = EFFORT) {
  const cover = coverByHand(false);
  const relaxation = relaxCover(cover, [], { steps: 1e6 });
  if (relaxation === undefined) throw new Error('No purchase is enough.');
  return proveCover(cover, relaxation, { below, effort, allowance: { steps: 1e7 } });
}

describe('proveCover', () => {
  test('proveCover(three sizes by hand on sheets of 60 by 45) buys three sheets, proven', () => {
    // Two sheets with both of 40 by 25 hold at most 2 and 1 of 30 with 3 of 20, or 2 of 30 with 5 of 20.
    const { found, bound } = prove(Number.POSITIVE_INFINITY);
    expect(found?.cost).toBe(36);
    expect(bound).toBe(36);
  });

  test('proveCover finds nothing that does not beat what is known, and says how cheap any could be', () => {
    expect(prove(36)).toEqual({ bound: 36 });
    expect(prove(20)).toEqual({ bound: 20 });
    expect(prove(40).found?.cost).toBe(36);
  });

  test('proveCover out of steps keeps a bound that holds', () => {
    expect(prove(100, { ...EFFORT, search: 1 }).bound).toBeLessThanOrEqual(36);
  });
});
