import { countFitting } from '../block/count-whole.ts';
import { type Roll, usableWidth } from '../cloth/usable-width.ts';
import type { Role } from '../contract.ts';

/** A bolt to cut from; lengths in millimetres. */
export interface Bolt extends Roll {
  readonly id: string;
  readonly role: Role;
  readonly print: string;
  readonly length: number;
  /** Spent on a straight edge once. */
  readonly squaring: number;
}

export interface BoltCount {
  /** What is left of the length after a prewash and squaring up, mm. */
  readonly usableLength: number;
  readonly perStrip: number;
  readonly strips: number;
  readonly squares: number;
}

/**
 * The most squares of one size from a bolt: strips ⌊(length·(1 − prewash) − squaring) / c⌋, in each
 * ⌊usable width / c⌋.
 *
 * @param cut side of a square, mm
 *
 * @example
 * countBolt({ id: 'a', role: 'top', print: 'a', width: 1000, length: 2000, selvage: 0, squaring: 25, prewash: { length: 0, width: 0 } }, 200) // => { usableLength: 1975, perStrip: 5, strips: 9, squares: 45 }
 */
export function countBolt(bolt: Bolt, cut: number): BoltCount {
  const usableLength = Math.max(0, bolt.length * (1 - bolt.prewash.length) - bolt.squaring);
  const perStrip = countFitting(Math.max(0, usableWidth(bolt)), cut);
  const strips = perStrip === 0 ? 0 : countFitting(usableLength, cut);
  return { usableLength, perStrip, strips, squares: perStrip * strips };
}
