import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faceOf } from '#core/block/size-block.ts';

describe('faceOf', () => {
  test('faceOf(8 1/2 in cut, 1 in seam) is 6 1/2 in', () => {
    expect(faceOf({ cut: 215.9, seam: 25.4 })).toBe(165.1);
  });

  test('faceOf(2 in cut, 1 in seam) is nothing: the seam eats the face', () => {
    expect(faceOf({ cut: 50.8, seam: 25.4 })).toBe(0);
  });

  test('faceOf grows one for one with the cut and two for one against the seam', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 600 }),
        fc.integer({ min: 3, max: 24 }),
        (cut, seam) => {
          expect(faceOf({ cut: cut + 1, seam }) - faceOf({ cut, seam })).toBe(1);
          expect(faceOf({ cut, seam }) - faceOf({ cut, seam: seam + 1 })).toBe(2);
        },
      ),
    );
  });
});
