import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usableWidth } from '#core/cloth/usable-width.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const NONE = { length: 0, width: 0 };

describe('usableWidth', () => {
  test('usableWidth(1000, selvage 10, 2 % crosswise) is 960', () => {
    const roll = deepFreeze({ width: 1000, selvage: 10, prewash: { length: 0.5, width: 0.02 } });
    expect(usableWidth(roll)).toBe(960);
  });

  test('usableWidth(42 in, selvage 1/2 in) is 41 in: one selvage at each edge', () => {
    const roll = { width: 1066.8, selvage: 12.7, prewash: NONE };
    expect(usableWidth(roll) / 25.4).toBeCloseTo(41, 10);
  });

  test('usableWidth of a cloth that grows in the prewash is wider than the roll', () => {
    const roll = { width: 1000, selvage: 0, prewash: { length: 0, width: -0.02 } };
    expect(usableWidth(roll)).toBeCloseTo(1020, 9);
  });

  test('usableWidth grows with the roll and shrinks with selvage and wash', () => {
    const roll = fc.record({
      width: fc.integer({ min: 100, max: 4000 }),
      selvage: fc.integer({ min: 0, max: 100 }),
      prewash: fc.record({
        length: fc.constant(0),
        width: fc.double({ min: 0, max: 0.3, noNaN: true }),
      }),
    });
    fc.assert(
      fc.property(roll, (one) => {
        const usable = usableWidth(one);
        expect(usableWidth({ ...one, width: one.width + 1 })).toBeGreaterThan(usable);
        expect(usableWidth({ ...one, selvage: one.selvage + 1 })).toBeLessThan(usable);
        const more = { length: 0, width: one.prewash.width + 0.01 };
        expect(usableWidth({ ...one, prewash: more })).toBeLessThan(usable);
      }),
    );
  });
});
