import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sewFor, washedSize } from '#core/wash/size-washed.ts';

const sides = fc.record({
  width: fc.double({ min: 100, max: 6000, noNaN: true }),
  height: fc.double({ min: 100, max: 6000, noNaN: true }),
});
const shrinks = fc.record({
  width: fc.double({ min: -0.2, max: 0.5, noNaN: true }),
  height: fc.double({ min: -0.2, max: 0.5, noNaN: true }),
});

describe('washedSize', () => {
  test('washedSize never makes a larger quilt of more shrink', () => {
    const mores = fc.double({ min: 0, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(sides, shrinks, mores, (sewn, shrink, more) => {
        const now = washedSize(sewn, shrink);
        const then = washedSize(sewn, { ...shrink, width: shrink.width + more });
        return then.width <= now.width && then.height === now.height;
      }),
    );
  });
});

describe('sewFor', () => {
  test('sewFor undoes washedSize, and washedSize undoes sewFor', () => {
    fc.assert(
      fc.property(sides, shrinks, (size, shrink) => {
        for (const back of [
          sewFor(washedSize(size, shrink), shrink),
          washedSize(sewFor(size, shrink), shrink),
        ]) {
          expect(back.width).toBeCloseTo(size.width, 8);
          expect(back.height).toBeCloseTo(size.height, 8);
        }
      }),
    );
  });
});
