import { cutLeast } from '../strips/cut-least.ts';
import { fitsAcross } from '../strips/fits-across.ts';
import type { PieceKind } from '../strips/list-levels.ts';
import type { Budget } from '../strips/strip-plan.ts';
import type { PurchasePlan } from './lay-out.ts';
import type { CoverOrder, RollOffer } from './offer.ts';

/** What to buy of each offer, how to cut it, and how cheap any purchase could be. */
export interface CoverPlan extends PurchasePlan {
  readonly cost: number;
  /** Proven: no purchase costs less. */
  readonly bound: number;
  readonly optimal: boolean;
  /** Proven: no purchase needs a shorter length of strips off the roll, mm. */
  readonly rollBound: number;
}

/**
 * The cheapest purchase off one roll and nothing else; nothing where that does not give all.
 *
 * @param allowance steps left for this and whatever comes after it; written over
 */
export function cheapestRoll(
  { kinds, usable, rolls, sheets }: CoverOrder,
  allowance: Budget,
): CoverPlan | undefined {
  if (rolls.length === 0 || !kinds.every((kind) => fitsRoll(kind, usable))) return undefined;
  const cut = cutLeast(kinds, usable, allowance);
  const prices = rolls.map((roll) => countSteps(roll, cut.length) * roll.cost);
  const cost = Math.min(...prices);
  const at = prices.indexOf(cost);
  const bound = Math.min(...rolls.map((roll) => countSteps(roll, cut.bound) * roll.cost));
  const steps = rolls.map((roll) => countSteps(roll, cut.length))[at] ?? 0;
  return {
    roll: { at, steps, strips: cut.strips },
    packs: sheets.map(() => 0),
    sheets: [],
    placed: kinds.map((kind) => kind.count),
    rollBound: cut.bound,
    cost,
    bound,
    optimal: cost <= bound + 1e-9,
  };
}

/** Whether a piece fits across a roll, upright or turned. */
export function fitsRoll({ across, along, canTurn }: PieceKind, usable: number): boolean {
  return fitsAcross(across, usable) || (canTurn && fitsAcross(along, usable));
}

/**
 * Steps to buy for a length of strips.
 *
 * @param length mm, after a prewash
 */
export function countSteps({ squaring, room, least }: RollOffer, length: number): number {
  return Math.max(least, Math.ceil((length + squaring) / room - 1e-7));
}
