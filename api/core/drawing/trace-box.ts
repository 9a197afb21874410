import { type Box, place } from './shape.ts';

/**
 * Path data around a rectangle.
 *
 * @param box in millimetres, from its top left corner.
 *
 * @example
 * traceBox({ x: 1, y: 2, width: 30, height: 40 }) // => 'M1 2h30v40h-30z'
 */
export function traceBox({ x, y, width, height }: Box): string {
  const across = place(width);
  return `M${place(x)} ${place(y)}h${across}v${place(height)}h${-across}z`;
}
