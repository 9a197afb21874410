import type { Drawing, Shape } from '../shape.ts';
import { drawBorder } from './draw-border.ts';
import { drawCutting } from './draw-cutting.ts';
import { drawJoining } from './draw-joining.ts';
import { drawLaying } from './draw-laying.ts';
import { drawQuilting } from './draw-quilting.ts';
import { drawRows } from './draw-rows.ts';
import { drawSnipping } from './draw-snipping.ts';
import { drawStacking } from './draw-stacking.ts';
import { type DrawnWork, readScene } from './read-scene.ts';
import { BOARD, type StepScene } from './step-scene.ts';

const DRAW: Readonly<Record<string, (scene: StepScene) => readonly Shape[]>> = {
  cut: drawCutting,
  stack: drawStacking,
  'quilt-first': (scene) => drawQuilting(scene, false),
  'quilt-second': (scene) => drawQuilting(scene, true),
  snip: drawSnipping,
  layout: drawLaying,
  join: drawJoining,
  'join-rows': drawRows,
  border: drawBorder,
};

/**
 * A step of the work as a drawing with the figures of this quilt, on a board of 300 by 200.
 *
 * @param id of the step.
 * @returns nothing where a drawing would not help, such as for a wash
 */
export function drawStep(id: string, answer: DrawnWork): Drawing | undefined {
  const shapes = DRAW[id]?.(readScene(answer)) ?? [];
  return shapes.length === 0 ? undefined : { box: BOARD, shapes };
}
