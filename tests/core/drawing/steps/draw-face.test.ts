import { expect, test } from 'vitest';
import { drawFace } from '#core/drawing/steps/draw-face.ts';
import { listTexts, sceneFor } from '../../../support/scene.ts';

test('drawFace has letters where they can be read, and no quilting', () => {
  const place = { cells: ['AB'], x: 0, y: 0 };
  const large = drawFace(sceneFor(), { ...place, side: 40 });
  expect(listTexts(large)).toEqual(['A', 'B']);
  expect(large.some(({ part }) => part === 'quilting')).toBe(false);
  expect(listTexts(drawFace(sceneFor(), { ...place, side: 9 }))).toEqual([]);
});
