import decodeQR from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import { type DrawnCode, drawCode } from '../../../client/drawing/draw-code.ts';

const SCALE = 4;

/** Paints an outline of squares into pixels, black on white, as a camera would see it. */
function paint({ path, side }: DrawnCode) {
  const width = side * SCALE;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)/g)) {
    for (let down = 0; down < SCALE; down += 1) {
      for (let across = 0; across < SCALE; across += 1) {
        const at = ((Number(y) * SCALE + down) * width + Number(x) * SCALE + across) * 4;
        data.fill(0, at, at + 3);
      }
    }
  }
  return { width, height: width, data };
}

describe('drawCode', () => {
  // Read back by the decoder of another author (qr), which shares no code with what draws it.
  test.each([
    'https://quilts.example/counter?target.width=40&target.height=50#0.width=44&0.got=1',
    'https://quilts.example/counter?layers.0.prints.0.id=Gr%C3%BCner%20Zweig&cut=8%C2%BD',
    `https://quilts.example/counter?${'target.width=40&'.repeat(40)}`,
  ])('drawCode(%j) is read back to the letter', (text) => {
    const code = drawCode(text);
    if (code === undefined) throw new Error('It fits into a code');
    expect(decodeQR(paint(code), { timeLimit: 5000 })).toBe(text);
  });

  test('drawCode leaves four modules of quiet on each side', () => {
    const code = drawCode('https://quilts.example/');
    const places = [...(code?.path ?? '').matchAll(/M(\d+) (\d+)/g)].flatMap(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(Math.min(...places)).toBe(4);
    expect(Math.max(...places)).toBe((code?.side ?? 0) - 5);
  });

  test('drawCode is nothing for a text that no code holds', () => {
    expect(drawCode('a'.repeat(3000))).toBeUndefined();
  });
});
