import { describe, expect, test } from 'vitest';
import { drawStrip } from '#core/drawing/draw-strip.ts';
import { readBoxes } from '../../support/cuts.ts';

const square = { letter: 'A', sides: '8 × 8', width: 200, length: 200 };
const border = { letter: 'B', sides: '4 × 12', width: 100, length: 300 };
const box = { x: 10, y: 20, width: 1000, height: 200 };
const lettering = { letters: 20, isNamed: true, isSized: true };
const strip = {
  length: 200,
  pieces: [
    { kind: square, count: 2, turned: false },
    { kind: border, count: 1, turned: true },
  ],
};

describe('drawStrip', () => {
  const shapes = drawStrip(strip, box, lettering);
  const find = (part: string) => shapes.filter((shape) => shape.part === part);

  test('drawStrip lays pieces side by side from the left, a turned one on its side', () => {
    const [pieces] = find('piece');
    expect(pieces?.kind === 'path' && readBoxes(pieces.d)).toEqual([
      { x: 10, y: 20, width: 200, height: 200 },
      { x: 210, y: 20, width: 200, height: 200 },
      { x: 410, y: 20, width: 300, height: 100 },
    ]);
  });

  test('drawStrip marks a turned piece with dashes and with its letter on its side', () => {
    expect(find('outline').some((shape) => shape.kind === 'path' && shape.dash)).toBe(true);
    const letters = find('letter').filter((shape) => shape.kind === 'text');
    expect(letters).toContainEqual(expect.objectContaining({ text: 'B', turn: 90 }));
    expect(letters.filter(({ text }) => text === 'A')[0]).not.toHaveProperty('turn');
  });

  test('drawStrip writes the sides where there is room, and only where told', () => {
    const texts = (isSized: boolean) =>
      drawStrip(strip, box, { ...lettering, isSized }).flatMap((shape) =>
        shape.kind === 'text' ? [shape.text] : [],
      );
    expect(texts(true)).toContain('8 × 8');
    expect(texts(false)).not.toContain('8 × 8');
  });

  test('drawStrip hatches what is trimmed off below and left beside', () => {
    expect(find('left')).toHaveLength(1);
    const whole = { length: 200, pieces: [{ kind: square, count: 5, turned: false }] };
    const parts = drawStrip(whole, box, lettering).map(({ part }) => part);
    expect(parts).not.toContain('left');
  });

  test('drawStrip without names has no letters', () => {
    const bare = drawStrip(strip, box, { ...lettering, isNamed: false });
    expect(bare.some(({ kind }) => kind === 'text')).toBe(false);
  });
});
