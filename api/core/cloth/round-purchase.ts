import { countNeeded } from '../block/count-whole.ts';
import type { Purchase, Unit } from '../contract.ts';
import { MILLIMETRES, roundTo } from '../length.ts';
import { writeEighths } from '../write-length.ts';

/**
 * What to ask for at the counter: a length rounded up to the step that the shop sells,
 * in yards (inches) or metres (centimetres).
 *
 * @param length mm
 * @param step mm, above 0; an eighth of a yard or ten centimetres are common practice
 *
 * @example
 * roundPurchase(2100, 114.3, 'in') // => { amount: 2.375, unit: 'yd', text: '2 3/8 yd' }
 * roundPurchase(2100, 100, 'cm') // => { amount: 2.1, unit: 'm', text: '2.1 m' }
 */
export function roundPurchase(length: number, step: number, unit: Unit): Purchase {
  const amount = amountBought(length, step, unit);
  if (unit === 'cm') return { amount, unit: 'm', text: `${amount} m` };
  const isEighths = Math.abs(amount * 8 - Math.round(amount * 8)) < 1e-3;
  return { amount, unit: 'yd', text: `${isEighths ? writeEighths(amount) : amount} yd` };
}

/**
 * The same without its words: yards (in) or metres (cm).
 *
 * @example
 * amountBought(2100, 114.3, 'in') // => 2.375
 */
export function amountBought(length: number, step: number, unit: Unit): number {
  const bought = countNeeded(length, step) * step;
  return roundTo(bought / (unit === 'cm' ? MILLIMETRES.m : MILLIMETRES.yd), 4);
}
