import type { Motif } from './find-print-look.ts';
import { type Box, place } from './shape.ts';

/** A point in the unit square of one repeat. */
type Point = readonly [x: number, y: number];

/** Each figure as strokes in one repeat, from 0 to 1 both ways; a stroke of one point is a dot. */
const STROKES: Readonly<Record<Motif, readonly (readonly Point[])[]>> = {
  dots: [[[0.5, 0.5]]],
  stripes: [
    [
      [0.5, 0],
      [0.5, 1],
    ],
  ],
  sprigs: [
    [
      [0.5, 0.85],
      [0.5, 0.3],
    ],
    [
      [0.22, 0.35],
      [0.5, 0.6],
      [0.78, 0.35],
    ],
  ],
  checks: [
    [
      [0.5, 0],
      [0.5, 1],
    ],
    [
      [0, 0.5],
      [1, 0.5],
    ],
  ],
  rings: [
    [
      [0.5, 0.2],
      [0.76, 0.35],
      [0.76, 0.65],
      [0.5, 0.8],
      [0.24, 0.65],
      [0.24, 0.35],
      [0.5, 0.2],
    ],
  ],
  zigzag: [
    [
      [0, 0.35],
      [0.5, 0.75],
      [1, 0.35],
    ],
  ],
  crosses: [
    [
      [0.25, 0.25],
      [0.75, 0.75],
    ],
    [
      [0.25, 0.75],
      [0.75, 0.25],
    ],
  ],
  bricks: [
    [
      [0.1, 0.25],
      [0.6, 0.25],
    ],
    [
      [0.4, 0.75],
      [0.9, 0.75],
    ],
  ],
};

/**
 * Path data, to be stroked with round ends, of a print's figure over one face.
 *
 * @param motif which figure.
 * @param face where, in millimetres.
 * @param grain `repeats` along each side, and whether the cloth is `turned` a quarter.
 *
 * @example
 * traceMotif('dots', { x: 0, y: 0, width: 20, height: 20 }, { repeats: 1, turned: false }) // => 'M10 10h0'
 */
export function traceMotif(
  motif: Motif,
  face: Box,
  grain: { readonly repeats: number; readonly turned: boolean },
): string {
  const { repeats, turned } = grain;
  const step: Point = [face.width / repeats, face.height / repeats];
  const cells = Array.from(
    { length: repeats * repeats },
    (_, cell): Point => [
      face.x + (cell % repeats) * step[0],
      face.y + Math.floor(cell / repeats) * step[1],
    ],
  );
  const spot = ([x, y]: Point, [left, top]: Point) =>
    `${place(left + (turned ? y : x) * step[0])} ${place(top + (turned ? x : y) * step[1])}`;
  const trace = (stroke: readonly Point[], cell: Point) =>
    stroke.length === 1
      ? stroke.map((point) => `M${spot(point, cell)}h0`)
      : [`M${stroke.map((point) => spot(point, cell)).join('L')}`];
  return cells.flatMap((cell) => STROKES[motif].flatMap((stroke) => trace(stroke, cell))).join('');
}
