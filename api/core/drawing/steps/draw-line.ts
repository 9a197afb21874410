import type { Part, PathShape, TextShape } from '../shape.ts';
import { place } from '../shape.ts';

/**
 * A stroke on the board in the colour of the text around it, or in another.
 *
 * @example
 * drawLine('cut', 'M0 0h9', { breadth: 2 }) // => { kind: 'path', part: 'cut', d: 'M0 0h9', stroke: 'currentColor', breadth: 2 }
 */
export function drawLine(
  part: Part,
  d: string,
  look: { readonly breadth: number; readonly dash?: string; readonly stroke?: string },
): PathShape {
  return { kind: 'path', part, d, stroke: 'currentColor', ...look };
}

/**
 * A measure on the board.
 *
 * @example
 * drawLabel(10, 20, '1 in').text // => '1 in'
 */
export function drawLabel(x: number, y: number, text: string): TextShape {
  const at = { x: place(x), y: place(y) };
  return { kind: 'text', part: 'measure-text', ...at, size: 17, text, fill: 'currentColor' };
}
