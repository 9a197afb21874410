import { askBolt } from './ask-bolt.ts';
import type { CounterNeed } from './counter-need.ts';
import { priceLength } from './price-length.ts';

/** A bolt at the counter: width in mm; price in minor units of a yard or metre, where it is known. */
export interface Bolt {
  readonly width: number;
  readonly price?: number | undefined;
}

/** What the cloth of a quilt comes to. */
export interface BoltSum {
  /** Minor units, over the cloths whose bolt has a price and takes the square. */
  readonly total: number;
  /** Cloths that have no part in the total. */
  readonly unpriced: number;
}

/**
 * What several cloths come to, each off its own bolt: the sum of the lines of a till.
 *
 * @param bolts in the order of the needs
 *
 * @example
 * const roll = { width: 1000, selvage: 0, prewash: { length: 0, width: 0 } };
 * const need = { cut: 200, squares: 11, spare: 0, roll, squaring: 25, step: 100, unit: 'cm' };
 * sumBolts([need, need], [{ width: 1000, price: 1200 }, { width: 1000 }]) // => { total: 840, unpriced: 1 }
 */
export function sumBolts(needs: readonly CounterNeed[], bolts: readonly Bolt[]): BoltSum {
  let total = 0;
  let unpriced = 0;
  for (const [at, need] of needs.entries()) {
    const { width = need.roll.width, price } = bolts[at] ?? {};
    const amount = askBolt(need, width).buy?.amount;
    if (price === undefined || amount === undefined) unpriced += 1;
    else total += priceLength(price, amount);
  }
  return { total, unpriced };
}
