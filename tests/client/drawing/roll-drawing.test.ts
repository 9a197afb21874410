import { expect, test } from 'vitest';
import { rollDrawings } from '../../../client/drawing/roll-drawing.ts';

const kind = { letter: 'A', sides: '8 × 8', width: 200, length: 200 };
const pieces = [{ kind, count: 2, turned: false }];
const roll = { groups: [{ count: 2, length: 200, reads: '', pieces }], squaring: 0, rest: 0 };

test('rollDrawings(rolls) are all in one scale, each as tall as its cloth', () => {
  const drawings = rollDrawings([
    { ...roll, width: 1000 },
    { ...roll, width: 450, rest: 100 },
  ]);
  expect(new Set(drawings.map(({ box }) => box.width)).size).toBe(1);
  expect(drawings.map(({ box }) => box.height)).toEqual([402, 502]);
});

test('rollDrawings([]) are none', () => {
  expect(rollDrawings([])).toEqual([]);
});
