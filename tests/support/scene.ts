import type { PlanRequest } from '#core/contract.ts';
import type { Shape, TextShape } from '#core/drawing/shape.ts';
import { readScene } from '#core/drawing/steps/read-scene.ts';
import type { StepScene } from '#core/drawing/steps/step-scene.ts';
import { planFor } from './plans.ts';

/** What the drawings of the steps show of a plan; of 4 by 5 blocks where nothing else is asked. */
export function sceneFor(request: Partial<PlanRequest> = {}): StepScene {
  return readScene(planFor({ target: { columns: 4, rows: 5 }, block: { cut: 8 }, ...request }));
}

/** All that is written in a drawing. */
export function listTexts(shapes: readonly Shape[]): readonly string[] {
  return shapes
    .filter((shape): shape is TextShape => shape.kind === 'text')
    .map(({ text }) => text);
}

/** Path data of all strokes of one part. */
export function tracePart(shapes: readonly Shape[], part: Shape['part']): string {
  return shapes
    .map((shape) => (shape.kind === 'path' && shape.part === part ? shape.d : ''))
    .join('');
}
