import { describe, expect, test } from 'vitest';
import type { Motif } from '#core/drawing/find-print-look.ts';
import { traceMotif } from '#core/drawing/trace-motif.ts';

const MOTIFS: readonly Motif[] = [
  'dots',
  'stripes',
  'sprigs',
  'checks',
  'rings',
  'zigzag',
  'crosses',
  'bricks',
];
const FACE = { x: 100, y: 200, width: 60, height: 90 };
const points = (d: string) =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

describe('traceMotif', () => {
  test.each(MOTIFS)('traceMotif(%j, face, grain) stays inside the face, turned or not', (motif) => {
    for (const turned of [false, true]) {
      for (const [x, y] of points(traceMotif(motif, FACE, { repeats: 3, turned }))) {
        expect(x).toBeGreaterThanOrEqual(100);
        expect(x).toBeLessThanOrEqual(160);
        expect(y).toBeGreaterThanOrEqual(200);
        expect(y).toBeLessThanOrEqual(290);
      }
    }
  });

  test('traceMotif gives every figure a drawing of its own', () => {
    const drawn = MOTIFS.map((motif) => traceMotif(motif, FACE, { repeats: 1, turned: false }));
    expect(new Set(drawn).size).toBe(MOTIFS.length);
  });

  test('traceMotif turns stripes a quarter with the cloth', () => {
    const face = { x: 0, y: 0, width: 80, height: 80 };
    expect(traceMotif('stripes', face, { repeats: 1, turned: false })).toBe('M40 0L40 80');
    expect(traceMotif('stripes', face, { repeats: 1, turned: true })).toBe('M0 40L80 40');
  });

  test('traceMotif repeats a figure as often as asked along each side', () => {
    const dots = traceMotif('dots', FACE, { repeats: 3, turned: false });
    expect(dots.match(/M/g)?.length).toBe(9);
  });
});
