import type { TemplateResult } from 'lit';
import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import { drawingView } from '../drawing/drawing-view.ts';

const BOX = { x: 0, y: 0, width: 24, height: 24 };

/**
 * One block of a print: its colour, its figure and its letter.
 *
 * @param print 0 for the first print.
 * @param color the print's own colour, where it has one.
 */
export function printSwatch(print: number, color?: string): TemplateResult {
  const shapes = drawBlocks({
    cells: [String.fromCharCode(65 + print)],
    x: 0,
    y: 0,
    faceWidth: 24,
    faceHeight: 24,
    colorOf: () => color,
    repeats: 2,
    hasLetters: true,
    alternating: false,
  });
  return drawingView({ box: BOX, shapes });
}
