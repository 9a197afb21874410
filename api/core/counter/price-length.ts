import { tidy } from '../length.ts';

/**
 * What a length off the bolt comes to, as a till has it: whole minor units, half up, rounded once a line.
 *
 * @param price minor units of one yard or metre
 * @param amount yards or metres, the same as the price is of
 *
 * @example
 * priceLength(1299, 2.375) // => 3085
 */
export function priceLength(price: number, amount: number): number {
  return Math.floor(tidy(price * amount) + 0.5);
}
