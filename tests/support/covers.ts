import type { Cover } from '#core/cloth/offers/cover-programme.ts';
import { listFillings } from '#core/cloth/offers/list-fillings.ts';
import type { CoverOrder } from '#core/cloth/offers/offer.ts';
import { BY_HAND, problemOf } from './strip-cases.ts';

/** The three sizes by hand, off a roll of 100 by steps of 30 at 10 each, or on sheets of 60 by 45 at 12. */
export const ORDER_BY_HAND: CoverOrder = {
  kinds: BY_HAND.kinds,
  usable: BY_HAND.usable,
  rolls: [{ room: 30, squaring: 5, least: 1, cost: 10 }],
  sheets: [{ width: 60, length: 45, count: 1, most: 3, cost: 12 }],
};

/** The same as one purchase, with the roll or without. */
export function coverByHand(isOffRoll: boolean): Cover {
  const problem = problemOf(BY_HAND);
  const [offer] = ORDER_BY_HAND.rolls;
  return {
    demand: problem.demand,
    sheets: ORDER_BY_HAND.sheets.map((sheet) => ({
      offer: sheet,
      fillings: listFillings(BY_HAND.kinds, sheet).fillings,
    })),
    ...(isOffRoll && offer && { roll: { offer, problem } }),
  };
}
