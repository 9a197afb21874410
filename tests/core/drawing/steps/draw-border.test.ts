import { expect, test } from 'vitest';
import { drawBorder } from '#core/drawing/steps/draw-border.ts';
import { listTexts, sceneFor, tracePart } from '../../../support/scene.ts';

test('drawBorder stitches as many rounds as the plan has, at the allowance', () => {
  const shapes = drawBorder({ ...sceneFor(), borderPasses: 2 });
  expect(tracePart(shapes, 'quilting').match(/z/g)).toHaveLength(2);
  expect(listTexts(shapes)).toEqual(['1 in']);
});
