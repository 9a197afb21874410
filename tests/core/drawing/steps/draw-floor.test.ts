import { expect, test } from 'vitest';
import { drawFloor } from '#core/drawing/steps/draw-floor.ts';
import { planFor } from '../../../support/plans.ts';
import { listTexts } from '../../../support/scene.ts';

test('drawFloor has a letter a block, the rows named from A and the columns numbered from 1', () => {
  const answer = planFor({ target: { columns: 4, rows: 5 }, block: { cut: 8 } });
  const texts = listTexts(drawFloor(answer).shapes);
  expect(texts.slice(0, 20).join('')).toBe(answer.layout.cells.join(''));
  expect(texts.slice(20)).toEqual(['A', 'B', 'C', 'D', 'E', '1', '2', '3', '4']);
});

test('drawFloor of very many rows names the first and every fifth', () => {
  const answer = planFor({ target: { columns: 2, rows: 30 }, block: { cut: 6 } });
  const names = listTexts(drawFloor(answer).shapes).slice(60);
  expect(names).toEqual(['A', 'E', 'J', 'O', 'T', 'Y', 'AD', '1', '2']);
});
