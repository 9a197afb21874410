import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameAlike } from '../../../../client/elements/compare/frame-alike.ts';

test('frameAlike gives one size, holds each drawing whole, and stands it on the foot in the middle', () => {
  const side = fc.integer({ min: 1, max: 5000 });
  const box = fc.record({
    x: fc.integer({ min: -50, max: 50 }),
    y: fc.integer({ min: -50, max: 50 }),
    width: side,
    height: side,
  });
  fc.assert(
    fc.property(box, box, (one, other) => {
      const framed = frameAlike([one, other].map((before) => ({ box: before, shapes: [] })));
      for (const [at, before] of [one, other].entries()) {
        const { x, y, width, height } = framed[at]?.box ?? { x: 0, y: 0, width: 0, height: 0 };
        expect([width, height]).toEqual([
          Math.max(one.width, other.width),
          Math.max(one.height, other.height),
        ]);
        expect(y + height).toBeCloseTo(before.y + before.height, 9);
        expect(before.x - x).toBeCloseTo(x + width - before.x - before.width, 9);
        expect(y).toBeLessThanOrEqual(before.y);
      }
    }),
  );
});
