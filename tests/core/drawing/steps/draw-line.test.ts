import { expect, test } from 'vitest';
import { drawLabel, drawLine } from '#core/drawing/steps/draw-line.ts';

test('drawLine takes the colour of the text around it unless it has its own', () => {
  const look = { breadth: 2, dash: '4 2' };
  expect(drawLine('cut', 'M0 0', look)).toMatchObject({ stroke: 'currentColor', dash: '4 2' });
  expect(drawLine('cut', 'M0 0', { ...look, stroke: '#123456' }).stroke).toBe('#123456');
});

test('drawLabel stands where it is put, to a tenth', () => {
  expect(drawLabel(10.04, 20.06, '1 in')).toMatchObject({ x: 10, y: 20.1, part: 'measure-text' });
});
