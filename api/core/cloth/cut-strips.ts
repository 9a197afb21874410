import { countFitting, countNeeded } from '../block/count-whole.ts';
import { type Roll, usableWidth } from './usable-width.ts';

/** One size of piece wanted from one roll; lengths in millimetres. */
export interface StripOrder {
  readonly roll: Roll;
  /** Side across the roll. */
  readonly across: number;
  /** Side along the roll. */
  readonly along: number;
  readonly pieces: number;
  /** Spent on a straight edge once. */
  readonly squaring: number;
}

export interface StripPlan {
  /** mm. */
  readonly usableWidth: number;
  readonly perStrip: number;
  readonly strips: number;
  /** Length as bought, before a prewash and before rounding to the step sold; mm. */
  readonly length: number;
}

/**
 * Pieces of one size cut from strips across the roll:
 * per strip ⌊usable / across⌋, strips ⌈pieces / per strip⌉,
 * length (strips·along + squaring) / (1 − prewash lengthwise).
 * No plan of whole strips needs fewer, since none holds more pieces.
 *
 * @returns a plan; `perStrip` 0 and no strips where a piece is wider than the roll
 *
 * @example
 * cutStrips({ roll: { width: 1000, selvage: 0, prewash: { length: 0, width: 0 } }, across: 200, along: 300, pieces: 11, squaring: 25 }) // => { usableWidth: 1000, perStrip: 5, strips: 3, length: 925 }
 */
export function cutStrips(order: StripOrder): StripPlan {
  const usable = usableWidth(order.roll);
  const perStrip = countFitting(usable, order.across);
  const strips = perStrip === 0 ? 0 : countNeeded(order.pieces, perStrip);
  const cloth = strips === 0 ? 0 : strips * order.along + order.squaring;
  return {
    usableWidth: usable,
    perStrip,
    strips,
    length: cloth / (1 - order.roll.prewash.length),
  };
}
