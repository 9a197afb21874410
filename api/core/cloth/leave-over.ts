import { countFitting } from '../block/count-whole.ts';
import { leaveRows, type Rectangle } from './leave-rows.ts';

/** Squares to be cut from one cloth, and what of it is worth keeping; mm. */
export interface SquareOrder {
  readonly cut: number;
  readonly squares: number;
  /** Shorter side of a rectangle worth keeping; one that gives a square is kept in any case. */
  readonly usable: number;
}

/** What a cloth gives beyond the squares wanted. */
export interface LeftOver {
  /** Whole squares more that can be cut from it. */
  readonly spareFree: number;
  /** Rectangles that are left when no more is cut than wanted, largest first. */
  readonly left: readonly Rectangle[];
}

/**
 * What one cloth gives beyond the squares wanted: ⌊width / cut⌋·⌊length / cut⌋ less those, and what is
 * left in rectangles when the squares are cut in rows across.
 *
 * @param cloth what of it can be cut: without selvages, squared up, after a prewash
 *
 * @example
 * leaveOver({ width: 500, length: 400 }, { cut: 150, squares: 5, usable: 60 }) // => { spareFree: 1, left: [{ width: 500, length: 100 }, { width: 200, length: 150 }] }
 */
export function leaveOver(cloth: Rectangle, { cut, squares, usable }: SquareOrder): LeftOver {
  const given = countFitting(cloth.width, cut) * countFitting(cloth.length, cut);
  const least = Math.min(usable, cut) - 1e-6;
  return {
    spareFree: Math.max(0, given - squares),
    left: leaveRows(cloth, { cut, squares })
      .filter(({ width, length }) => Math.min(width, length) >= least)
      .toSorted((one, other) => other.width * other.length - one.width * one.length),
  };
}
