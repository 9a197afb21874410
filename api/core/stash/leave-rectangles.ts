import { leaveRows, type Rectangle } from '../cloth/leave-rows.ts';
import { countSquares, type Remnant } from './count-squares.ts';

/**
 * What is left of one piece in rectangles when squares are cut from one corner on, row by row: the end
 * that no row reaches, the edge beside the full rows, and the rest of the last row.
 * Rows are laid across or along, whichever leaves the larger rectangle, ties across.
 *
 * @param order side of a square in mm, squares wanted (at most what the piece gives, at least 1), and
 * the least shorter side of a rectangle worth keeping
 * @returns largest first
 *
 * @example
 * leaveRectangles({ width: 500, length: 400, selvage: 0, squaring: 0 }, { cut: 150, squares: 3, usable: 60 }) // => [{ width: 500, length: 250 }]
 */
export function leaveRectangles(
  piece: Remnant,
  order: { readonly cut: number; readonly squares: number; readonly usable: number },
): readonly Rectangle[] {
  const { across, along } = layBoth(piece, order);
  return (isBetter(along, across) ? along : across).toSorted(byArea);
}

/**
 * Whether rows of squares are laid along a piece and not across it, as `leaveRectangles` lays them.
 *
 * @example
 * areRowsAlong({ width: 500, length: 310, selvage: 0, squaring: 0 }, { cut: 150, squares: 2, usable: 60 }) // => true
 */
export function areRowsAlong(
  piece: Remnant,
  order: { readonly cut: number; readonly squares: number; readonly usable: number },
): boolean {
  const { across, along } = layBoth(piece, order);
  return isBetter(along, across);
}

function layBoth(
  piece: Remnant,
  order: { readonly cut: number; readonly squares: number; readonly usable: number },
) {
  const { usableWidth, usableLength } = countSquares(piece, order.cut);
  const upright = leaveRows({ width: usableWidth, length: usableLength }, order);
  const turned = leaveRows({ width: usableLength, length: usableWidth }, order).map(turn);
  const kept = (rectangles: readonly Rectangle[]) =>
    rectangles.filter(({ width, length }) => Math.min(width, length) >= order.usable - 1e-6);
  return { across: kept(upright), along: kept(turned) };
}

function isBetter(one: readonly Rectangle[], other: readonly Rectangle[]): boolean {
  return largest(one) > largest(other) + 1e-6;
}

function turn({ width, length }: Rectangle): Rectangle {
  return { width: length, length: width };
}

function largest(rectangles: readonly Rectangle[]): number {
  return Math.max(0, ...rectangles.map(({ width, length }) => width * length));
}

function byArea(one: Rectangle, other: Rectangle): number {
  return other.width * other.length - one.width * one.length;
}
