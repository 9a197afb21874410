import { describe, expect, test } from 'vitest';
import { coverPieces } from '#core/cloth/offers/cover-pieces.ts';
import type { CoverOrder } from '#core/cloth/offers/offer.ts';
import { heightOf } from '#core/cloth/strips/trim-plan.ts';
import { ORDER_BY_HAND } from '../../../support/covers.ts';
import { deepFreeze } from '../../../support/deep-freeze.ts';

const ORDER: CoverOrder = deepFreeze(ORDER_BY_HAND);

describe('coverPieces', () => {
  test('coverPieces off a roll alone buys 2 steps for 55 and 5 of squaring-up', () => {
    const plan = coverPieces({ ...ORDER, sheets: [] });
    expect(plan).toMatchObject({
      packs: [],
      sheets: [],
      cost: 20,
      bound: 20,
      optimal: true,
      rollBound: 55,
    });
    expect(plan.roll).toMatchObject({ at: 0, steps: 2 });
    expect(heightOf(plan.roll?.strips ?? [])).toBe(55);
  });

  test('coverPieces mixes a roll and sheets where that is cheapest', () => {
    // Two steps are 20; three sheets are needed without a roll. A sheet of 60 by 55 holds what a strip
    // of 25 leaves over: three of 30 and four of 20, in strips of 20, 20 and 10.
    const dear = coverPieces(ORDER);
    expect(dear).toMatchObject({ cost: 20, optimal: true, packs: [0] });
    const cheap = coverPieces({ ...ORDER, sheets: [{ width: 60, length: 45, count: 1, cost: 6 }] });
    expect(cheap).toMatchObject({ cost: 18, optimal: true, packs: [3], placed: [3, 2, 5] });
    const wide = coverPieces({
      ...ORDER,
      sheets: [{ width: 60, length: 55, count: 1, cost: 6, most: 1 }],
    });
    expect(wide).toMatchObject({ cost: 16, optimal: true, packs: [1], roll: { steps: 1 } });
  });

  test('coverPieces buys whole packs', () => {
    const sheets = [{ width: 60, length: 45, count: 5, cost: 13 }];
    expect(coverPieces({ ...ORDER, sheets })).toMatchObject({ cost: 13, packs: [1] });
  });

  test('coverPieces of what no purchase gives tells what is placed', () => {
    const sheets = [{ width: 60, length: 45, count: 1, most: 1, cost: 12 }];
    const plan = coverPieces({ ...ORDER, rolls: [], sheets });
    expect(plan.optimal).toBe(false);
    // Two of 30, one of 40 and one of 20.
    const area = [600, 1000, 200].reduce((sum, own, at) => sum + own * (plan.placed[at] ?? 0), 0);
    expect(area).toBe(2400);
  });

  test('coverPieces never costs more for another offer, and says so for offers that cost nothing', () => {
    const more = [...ORDER.sheets, { width: 100, length: 20, count: 1, cost: 3 }];
    expect(coverPieces({ ...ORDER, sheets: more }).cost).toBeLessThanOrEqual(20);
    const free = [{ width: 60, length: 45, count: 1, cost: 0 }];
    expect(coverPieces({ ...ORDER, sheets: free })).toMatchObject({ cost: 0, optimal: true });
  });
});
