import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawCuts } from '#core/drawing/draw-cuts.ts';
import { cutFabrics, mixedBolt, readBoxes } from '../../support/cuts.ts';

const pieces = (answer: ReturnType<typeof cutFabrics>) =>
  drawCuts(answer).shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.part === 'piece' ? readBoxes(shape.d) : [],
  );

describe('drawCuts', () => {
  test('drawCuts draws every piece that was asked, in its size', () => {
    const side = fc.integer({ min: 2, max: 20 });
    const kind = fc.record({ width: side, length: side, count: fc.integer({ min: 1, max: 12 }) });
    fc.assert(
      fc.property(fc.array(kind, { minLength: 1, maxLength: 4 }), (kinds) => {
        const asked = kinds.map((one, at) => ({ id: `p${at}`, ...one }));
        const drawn = pieces(cutFabrics({ id: 'f', width: 42, pieces: asked }));
        const sizes = (rows: readonly { width: number; height: number }[]) =>
          rows.map(({ width, height }) => [width, height].sort((a, b) => a - b).join('×')).sort();
        const wanted = asked.flatMap(({ width, length, count }) =>
          Array.from({ length: count }, () => ({
            width: Math.round(width * 254) / 10,
            height: Math.round(length * 254) / 10,
          })),
        );
        expect(sizes(drawn)).toEqual(sizes(wanted));
      }),
      { numRuns: 60 },
    );
  });

  test('drawCuts lays no piece over another, nor outside the picture', () => {
    const answer = cutFabrics(mixedBolt, { ...mixedBolt, id: 'Rust check', width: 60 });
    const { box } = drawCuts(answer);
    const drawn = pieces(answer);
    for (const [at, one] of drawn.entries()) {
      expect(one.x).toBeGreaterThanOrEqual(box.x);
      expect(one.x + one.width).toBeLessThanOrEqual(box.x + box.width + 0.2);
      expect(one.y + one.height).toBeLessThanOrEqual(box.y + box.height);
      for (const other of drawn.slice(at + 1)) {
        const across =
          Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
        const down =
          Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
        expect(Math.min(across, down)).toBeLessThanOrEqual(0.21);
      }
    }
  });

  test('drawCuts is drawn without grey: ink on paper, hatching for what is left', () => {
    const colours = drawCuts(cutFabrics(mixedBolt)).shapes.flatMap((shape) =>
      shape.kind === 'path' ? [shape.fill, shape.stroke] : [shape.fill],
    );
    expect(new Set(colours)).toEqual(new Set([undefined, '#fffaf0', '#1b2233', 'currentColor']));
  });
});
