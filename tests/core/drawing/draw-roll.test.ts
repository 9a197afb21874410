import { describe, expect, test } from 'vitest';
import { drawRoll, spanOf } from '#core/drawing/draw-roll.ts';

const kind = { letter: 'A', sides: '8 × 8', width: 200, length: 200 };
const pieces = [{ kind, count: 4, turned: false }];
const roll = {
  groups: [{ count: 3, length: 200, reads: '8 in', pieces }],
  width: 1000,
  squaring: 25,
  rest: 60,
};

describe('drawRoll', () => {
  const { shapes, height } = drawRoll(roll, { x: 0, y: 100, letters: 20 });
  const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

  test('drawRoll numbers the strips in the order of the cuts', () => {
    expect(texts.filter((text) => /^\d$/.test(text))).toEqual(['1', '2', '3']);
  });

  test('drawRoll says the length of the first of strips alike', () => {
    expect(texts.filter((text) => text === '8 in')).toHaveLength(1);
  });

  test('drawRoll draws a cut below each strip, to scale', () => {
    const cuts = shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.part === 'cut' ? [shape.d.split(/[M ]/)[2]] : [],
    );
    expect(cuts.map((d) => Number.parseFloat(d ?? ''))).toEqual([325, 525, 725]);
  });

  test('drawRoll is as tall as its cloth where it is one column', () => {
    expect(height).toBe(25 + 600 + 60);
  });

  test('spanOf(roll) leaves room at both sides for numbers and measures', () => {
    expect(spanOf(roll, 20)).toBe(1072);
  });

  test('drawRoll of many strips has letters in the first of those alike only', () => {
    const many = { ...roll, groups: [{ count: 90, length: 30, reads: '', pieces }] };
    const letters = drawRoll(many, { x: 0, y: 0, letters: 20 }).shapes.filter(
      (shape) => shape.kind === 'text' && shape.text === 'A',
    );
    expect(letters).toHaveLength(4);
  });
});
