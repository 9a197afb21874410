import { expect, test } from 'vitest';
import { drawCutting } from '#core/drawing/steps/draw-cutting.ts';
import { listTexts, sceneFor, tracePart } from '../../../support/scene.ts';

test('drawCutting cuts as many squares across as the strip gives, and hatches the rest', () => {
  const scene = sceneFor();
  const shapes = drawCutting(scene);
  // 41 in usable give five squares of 8 in and leave an inch.
  expect(tracePart(shapes, 'cut').match(/v/g)).toHaveLength(5);
  expect(tracePart(shapes, 'left')).not.toBe('');
  expect(listTexts(shapes)).toEqual(['8 in']);
});

test('drawCutting draws nothing of a roll that gives no square', () => {
  expect(drawCutting({ ...sceneFor(), perStrip: 0 })).toEqual([]);
});
