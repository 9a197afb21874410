import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawBolts, type UnrolledBolt } from '../../../../client/elements/kits/draw-bolt.ts';
import { readBoxes } from '../../../support/cuts.ts';

const BOLT: UnrolledBolt = {
  ...{ width: 1000, length: 2000, squaring: 25, cut: 200 },
  ...{ strips: 9, perStrip: 5, used: 43, print: 0 },
};
const squares = (bolt: UnrolledBolt) =>
  (drawBolts([bolt])[0]?.shapes ?? []).flatMap((shape) =>
    shape.kind === 'path' && shape.part === 'piece' ? [readBoxes(shape.d)] : [],
  );

describe('drawBolts', () => {
  test('draws every square that is cut, those in no kit apart', () => {
    const [used, over] = squares(BOLT);
    expect([used?.length, over?.length]).toEqual([43, 2]);
    expect(used?.every(({ width, height }) => width === 200 && height === 200)).toBe(true);
  });

  test('lays a long bolt in rows, inside the picture and no square on another', () => {
    const bolt = fc.record({
      strips: fc.integer({ min: 1, max: 150 }),
      cut: fc.integer({ min: 100, max: 400 }),
    });
    fc.assert(
      fc.property(bolt, ({ strips, cut }) => {
        const perStrip = Math.floor(1000 / cut);
        const one = { ...BOLT, cut, strips, perStrip, used: strips * perStrip };
        const long = { ...one, length: 25 + strips * cut + 100 };
        const [drawing] = drawBolts([long]);
        const [boxes = []] = squares(long);
        expect(boxes).toHaveLength(strips * perStrip);
        expect(new Set(boxes.map(({ x, y }) => `${x} ${y}`)).size).toBe(boxes.length);
        for (const { x, y, width, height } of boxes) {
          expect(x + width).toBeLessThanOrEqual((drawing?.box.width ?? 0) + 0.2);
          expect(y + height).toBeLessThanOrEqual((drawing?.box.height ?? 0) + 0.2);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('numbers the first strip and every fifth', () => {
    const texts = (drawBolts([BOLT])[0]?.shapes ?? []).flatMap((shape) =>
      shape.kind === 'text' ? [shape.text] : [],
    );
    expect(texts).toEqual(['1', '5']);
  });

  test('draws all bolts in one scale, and one that is not cut as all left', () => {
    const drawings = drawBolts([BOLT, { ...BOLT, length: 500, strips: 0, used: 0 }]);
    expect(new Set(drawings.map(({ box }) => box.width)).size).toBe(1);
    expect(drawings[1]?.shapes.map(({ part }) => part)).toEqual(['left', 'outline']);
  });
});
