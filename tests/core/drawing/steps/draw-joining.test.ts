import { expect, test } from 'vitest';
import { drawJoining } from '#core/drawing/steps/draw-joining.ts';
import { listTexts, sceneFor, tracePart } from '../../../support/scene.ts';

test('drawJoining lays all layers of two blocks on each other, prints outside', () => {
  const shapes = drawJoining({ ...sceneFor(), layers: 3 });
  expect(tracePart(shapes, 'piece').match(/z/g)).toHaveLength(6);
  expect(shapes.filter(({ part }) => part === 'motif')).toHaveLength(2);
  expect(listTexts(shapes)).toEqual(['1 in']);
});
