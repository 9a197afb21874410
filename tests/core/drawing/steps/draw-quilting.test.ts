import { expect, test } from 'vitest';
import { drawQuilting } from '#core/drawing/steps/draw-quilting.ts';
import { sceneFor, tracePart } from '../../../support/scene.ts';

test('drawQuilting sews one line a block, then two', () => {
  const lines = (isSecond: boolean) =>
    tracePart(drawQuilting({ ...sceneFor(), chained: false }, isSecond), 'quilting').match(/l/g);
  expect(lines(false)).toHaveLength(3);
  expect(lines(true)).toHaveLength(6);
});

test('drawQuilting links the blocks of a chain, and nothing else', () => {
  const links = (change: object) =>
    tracePart(drawQuilting({ ...sceneFor(), ...change }, false), 'quilting').match(/L/g);
  expect(links({ chained: true })).toHaveLength(2);
  expect(links({ chained: false })).toBeNull();
  expect(links({ chained: true, cells: ['A'] })).toBeNull();
});
