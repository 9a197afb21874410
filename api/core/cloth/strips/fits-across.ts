import { ROOM_SLACK } from './list-levels.ts';

/**
 * Whether a piece lies within a width, as the plans of strips see it.
 *
 * @param side of the piece that lies across, mm
 * @param usable width that can be cut, mm
 *
 * @example
 * fitsAcross(30, 30) // => true
 * fitsAcross(31, 30) // => false
 */
export function fitsAcross(side: number, usable: number): boolean {
  return side <= usable + ROOM_SLACK;
}
