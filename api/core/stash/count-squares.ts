import { countFitting } from '../block/count-whole.ts';

/** A piece on hand; lengths in millimetres. */
export interface Remnant {
  /** Across, selvages included. */
  readonly width: number;
  readonly length: number;
  /** Cut away at each edge across. */
  readonly selvage: number;
  /** Cut away once along to straighten it. */
  readonly squaring: number;
}

/** How one piece gives squares; lengths in millimetres. */
export interface SquareCount {
  readonly usableWidth: number;
  readonly usableLength: number;
  /** Squares beside each other across, and along. */
  readonly across: number;
  readonly along: number;
}

/**
 * The most squares of one size that a piece gives: ⌊width / c⌋·⌊length / c⌋ of what is usable.
 *
 * No cutting gives more: a lattice of points c apart can be laid so that only ⌊w/c⌋·⌊l/c⌋ of them
 * fall inside, and every square, half open, holds exactly one.
 *
 * @param cut side of a square, mm
 *
 * @example
 * countSquares({ width: 500, length: 460, selvage: 10, squaring: 0 }, 150) // => { usableWidth: 480, usableLength: 460, across: 3, along: 3 }
 */
export function countSquares(piece: Remnant, cut: number): SquareCount {
  const usableWidth = Math.max(0, piece.width - 2 * piece.selvage);
  const usableLength = Math.max(0, piece.length - piece.squaring);
  return {
    usableWidth,
    usableLength,
    across: countFitting(usableWidth, cut),
    along: countFitting(usableLength, cut),
  };
}
