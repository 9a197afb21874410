import { type Box, place } from './shape.ts';

/**
 * Path data of slanting lines over a rectangle, for what is cut away.
 *
 * The lines are x + y = a multiple of the pitch, so that rectangles side by side are hatched as one.
 *
 * @param box in millimetres; one without area has no lines.
 * @param pitch from line to line along a side, above 0.
 *
 * @example
 * traceHatch({ x: 0, y: 0, width: 20, height: 20 }, 10) // => 'M0 10L10 0M0 20L20 0M10 20L20 10'
 */
export function traceHatch({ x, y, width, height }: Box, pitch: number): string {
  const first = Math.floor((x + y) / pitch + 1e-9) + 1;
  const last = Math.ceil((x + width + y + height) / pitch - 1e-9) - 1;
  const lines: string[] = [];
  for (let line = first; line <= last && width > 0 && height > 0; line += 1) {
    const sum = line * pitch;
    const low = Math.max(x, sum - y - height);
    const high = Math.min(x + width, sum - y);
    lines.push(`M${place(low)} ${place(sum - low)}L${place(high)} ${place(sum - high)}`);
  }
  return lines.join('');
}
