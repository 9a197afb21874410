import type { Purchase } from '#core/contract.ts';
import { speakLength } from '#core/speak-length.ts';
import { writeMeasure } from '../../fields/write-figures.ts';

/**
 * What to say across the counter. Yards are spoken in English alone; where they are seldom sold, they stand in figures.
 *
 * @example
 * speakPurchase('en', { amount: 2.375, unit: 'yd', text: '2 3/8 yd' }) // => 'two and three eighths yards'
 * speakPurchase('de', { amount: 2.1, unit: 'm', text: '2.1 m' }) // => '2 m 10'
 */
export function speakPurchase(language: string, { amount, unit }: Purchase): string {
  if (unit === 'yd' && language !== 'en') return writeMeasure(language, unit, amount);
  const sign = new Intl.NumberFormat(language).format(0.5).charAt(1);
  return speakLength({ amount, unit }).replace('.', sign);
}
