import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { threadRatio } from '#core/sewing/thread-ratio.ts';

const thickness = fc.double({ min: 0, max: 20, noNaN: true });
const stitch = fc.double({ min: 0.5, max: 8, noNaN: true });

describe('threadRatio', () => {
  test('threadRatio(1 mm, stitches of 2.5 mm) is 2.8', () => {
    expect(threadRatio(1, 2.5)).toBe(2.8);
  });

  test('threadRatio of cloth without thickness is 2: needle and bobbin lie straight', () => {
    expect(threadRatio(0, 2.5)).toBe(2);
  });

  test('threadRatio grows with thickness and falls with longer stitches', () => {
    fc.assert(
      fc.property(thickness, stitch, (thick, length) => {
        const ratio = threadRatio(thick, length);
        expect(threadRatio(thick + 0.1, length)).toBeGreaterThan(ratio);
        expect(threadRatio(thick, length + 0.1)).toBeLessThanOrEqual(ratio);
      }),
    );
  });

  test('threadRatio is the same whatever the unit: only thickness per stitch counts', () => {
    fc.assert(
      fc.property(thickness, stitch, (thick, length) => {
        expect(threadRatio(thick / 25.4, length / 25.4)).toBeCloseTo(threadRatio(thick, length), 9);
      }),
    );
  });
});
