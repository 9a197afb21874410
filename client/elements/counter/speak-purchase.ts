import type { Purchase } from '#core/contract.ts';
import { writeMeasure } from '../../fields/write-figures.ts';

/**
 * What to say across the counter.
 *
 * @example
 * speakPurchase('de', { amount: 2.1, unit: 'm', text: '2.1 m' }) // => '2,1\u00a0m'
 */
export function speakPurchase(language: string, { amount, unit }: Purchase): string {
  return writeMeasure(language, unit, amount);
}
