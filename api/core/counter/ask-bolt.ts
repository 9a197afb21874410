import { cutStrips, type StripPlan } from '../cloth/cut-strips.ts';
import { roundPurchase } from '../cloth/round-purchase.ts';
import type { Purchase } from '../contract.ts';
import type { CounterNeed } from './counter-need.ts';

/** What to ask for off one bolt. */
export interface BoltAsk extends StripPlan {
  /** Nothing where a square is wider than the bolt. */
  readonly buy: Purchase | undefined;
  /** Squares that the length bought gives beyond those needed. */
  readonly over: number;
}

/**
 * How much of one cloth to ask for, off a bolt of this width: strips by `cutStrips`, rounded up to the step that the
 * shop sells by `roundPurchase`. The same figures as in the plan where the bolt is as wide as the plan took it to be.
 *
 * @param width of the bolt, mm
 *
 * @example
 * const roll = { width: 1000, selvage: 0, prewash: { length: 0, width: 0 } };
 * const need = { cut: 200, squares: 11, spare: 0, roll, squaring: 25, step: 100, unit: 'cm' };
 * askBolt(need, 1000).buy // => { amount: 0.7, unit: 'm', text: '0.7 m' }
 * askBolt(need, 1400).strips // => 2
 * askBolt(need, 150).buy // => undefined
 */
export function askBolt(need: CounterNeed, width: number): BoltAsk {
  const { roll, cut, squares, squaring, step, unit } = need;
  const pieces = { across: cut, along: cut, pieces: squares, squaring };
  const plan = cutStrips({ roll: { ...roll, width }, ...pieces });
  if (plan.perStrip === 0) return { ...plan, buy: undefined, over: 0 };
  const buy = roundPurchase(plan.length, step, unit);
  return { ...plan, buy, over: plan.perStrip * plan.strips - squares };
}
