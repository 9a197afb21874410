import { expect, test } from 'vitest';
import { drawStacking } from '#core/drawing/steps/draw-stacking.ts';
import { listTexts, sceneFor } from '../../../support/scene.ts';

test('drawStacking shows a sheet for each layer below the print', () => {
  const sheets = (layers: number) =>
    drawStacking({ ...sceneFor(), layers }).filter(({ part }) => part === 'piece').length;
  expect(sheets(3) - sheets(2)).toBe(1);
});

test('drawStacking has the print of the first block on top', () => {
  const scene = sceneFor();
  expect(listTexts(drawStacking(scene))).toEqual([scene.cells[0]?.[0]]);
});
