import { describe, expect, test } from 'vitest';
import { cheapestRoll } from '#core/cloth/offers/cheapest-roll.ts';
import type { CoverOrder } from '#core/cloth/offers/offer.ts';
import { ORDER_BY_HAND } from '../../../support/covers.ts';

const ROLL = { room: 30, squaring: 5, least: 1, cost: 10 } as const;
const cheapest = (order: CoverOrder) => cheapestRoll(order, { steps: 1e6 });
const ORDER = { ...ORDER_BY_HAND, sheets: [] };

describe('cheapestRoll', () => {
  test('cheapestRoll takes the cheapest of several rolls, and the least that each sells', () => {
    // 55 and 5 of squaring-up: 2 steps of 30, 4 of 15, or the 9 that the last sells at the least.
    const rolls = [ROLL, { ...ROLL, room: 15, cost: 4 }, { ...ROLL, room: 15, cost: 3, least: 9 }];
    expect(cheapest({ ...ORDER, rolls })).toMatchObject({
      cost: 16,
      bound: 16,
      optimal: true,
      rollBound: 55,
      roll: { at: 1, steps: 4 },
    });
    expect(cheapest({ ...ORDER, rolls: rolls.slice(2) })).toMatchObject({ cost: 27 });
  });

  test('cheapestRoll is nothing without a roll, or for a piece that no roll takes', () => {
    expect(cheapest({ ...ORDER, rolls: [] })).toBeUndefined();
    expect(cheapest({ ...ORDER, usable: 39, rolls: [ROLL] })).toBeDefined();
    expect(cheapest({ ...ORDER, usable: 24, rolls: [ROLL] })).toBeUndefined();
  });
});
