import { countFitting } from '../block/count-whole.ts';
import { usableWidth } from '../cloth/usable-width.ts';
import type { CounterNeed } from './counter-need.ts';

/** What is at hand of one bolt; mm. */
export interface BoltEnd {
  readonly width: number;
  readonly length: number;
}

/**
 * How many squares what is left on a bolt gives, in whole strips across it:
 * ⌊usable width / side⌋ · ⌊(length·(1 − prewash lengthwise) − squaring) / side⌋.
 * Enough for a need exactly where the length that `askBolt` asks for, before rounding, is no more than is left.
 *
 * @returns whole, 0 where none comes out
 *
 * @example
 * const roll = { width: 1000, selvage: 0, prewash: { length: 0, width: 0 } };
 * countSquaresLeft({ cut: 200, roll, squaring: 25 }, { width: 1000, length: 640 }) // => 15
 */
export function countSquaresLeft(
  { cut, roll, squaring }: Pick<CounterNeed, 'cut' | 'roll' | 'squaring'>,
  { width, length }: BoltEnd,
): number {
  const perStrip = countFitting(usableWidth({ ...roll, width }), cut);
  return perStrip * countFitting(length * (1 - roll.prewash.length) - squaring, cut);
}
