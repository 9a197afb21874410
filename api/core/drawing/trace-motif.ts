import type { Motif } from './find-print-look.ts';
import { type Box, place } from './shape.ts';

/** A point in the square of one repeat. */
type Point = readonly [x: number, y: number];

/**
 * Each figure as strokes in one repeat: two digits a point, x and y in eighths of its side;
 * a stroke of one point is a dot.
 */
const STROKES: Readonly<Record<Motif, string>> = {
  dots: '44',
  stripes: '40 48',
  sprigs: '47 42,22 45 62',
  checks: '40 48,04 84',
  rings: '42 63 65 46 25 23 42',
  zigzag: '03 46 83',
  crosses: '22 66,26 62',
  bricks: '12 52,36 76',
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
  const [across, down] = [face.width / repeats, face.height / repeats];
  const cells = Array.from(
    { length: repeats * repeats },
    (_, cell): Point => [
      face.x + (cell % repeats) * across,
      face.y + Math.floor(cell / repeats) * down,
    ],
  );
  const spot = ([x = 0, y = 0]: readonly number[], [left, top]: Point) =>
    `${place(left + ((turned ? y : x) / 8) * across)} ${place(top + ((turned ? x : y) / 8) * down)}`;
  return cells
    .flatMap((cell) =>
      STROKES[motif].split(',').map((stroke) => {
        const points = stroke.split(' ').map((point) => spot([...point].map(Number), cell));
        return `M${points.join('L')}${points.length === 1 ? 'h0' : ''}`;
      }),
    )
    .join('');
}
