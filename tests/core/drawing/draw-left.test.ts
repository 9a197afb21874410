import { expect, test } from 'vitest';
import { drawLeft } from '#core/drawing/draw-left.ts';

test('drawLeft(boxes) hatches all of them in one path, in the ink of the page', () => {
  const boxes = [0, 50].map((x) => ({ x, y: 0, width: 30, height: 30 }));
  const [path, ...others] = drawLeft(boxes, 10);
  expect(others).toEqual([]);
  expect(path).toMatchObject({ kind: 'path', part: 'left', stroke: 'currentColor' });
  expect(path?.d).toContain('M50 ');
});

test('drawLeft([]) draws nothing', () => {
  expect(drawLeft([], 10)).toEqual([]);
});
