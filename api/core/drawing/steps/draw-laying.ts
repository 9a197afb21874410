import { place, type Shape } from '../shape.ts';
import { drawFace } from './draw-face.ts';
import { drawLine } from './draw-line.ts';
import type { StepScene } from './step-scene.ts';

/**
 * All blocks as they are laid out, the one at the top left marked.
 */
export function drawLaying(scene: StepScene): readonly Shape[] {
  const { columns, rows, cells } = scene;
  const side = Math.min(264 / columns, 172 / rows);
  const [x, y] = [150 - (columns * side) / 2, 108 - (rows * side) / 2];
  const pin = `M${place(x - 16)} ${place(y - 16)}L${place(x + side / 2)} ${place(y + side / 2)}`;
  const head = `M${place(x - 16)} ${place(y - 16)}h0`;
  return [
    ...drawFace(scene, { cells, x, y, side }),
    drawLine('measure', pin, { breadth: 2.6 }),
    { ...drawLine('measure', head, { breadth: 11 }), round: true },
  ];
}
