import { expect, test } from 'vitest';
import { drawLaying } from '#core/drawing/steps/draw-laying.ts';
import { listTexts, sceneFor } from '../../../support/scene.ts';

test('drawLaying lays the arrangement of the plan, letter by letter', () => {
  const scene = sceneFor();
  expect(listTexts(drawLaying(scene)).join('')).toBe(scene.cells.join(''));
});
