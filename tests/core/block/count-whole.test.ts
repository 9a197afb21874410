import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countFitting, countNeeded } from '#core/block/count-whole.ts';

const size = fc.integer({ min: 1, max: 6000 }).map((tenths) => tenths / 10);

describe('countFitting', () => {
  test('countFitting(42 in, 8.4 in) is 5 in inches and in millimetres alike', () => {
    expect(Math.floor(1066.8 / (8.4 * 25.4))).toBe(5);
    expect(countFitting(42, 8.4)).toBe(5);
    expect(countFitting(42 * 25.4, 8.4 * 25.4)).toBe(5);
  });

  test('countFitting(0.3, 0.1) is 3 although the quotient falls just short', () => {
    expect(Math.floor(0.3 / 0.1)).toBe(2);
    expect(countFitting(0.3, 0.1)).toBe(3);
  });

  test('countFitting(-5, 10) is 0', () => {
    expect(countFitting(-5, 10)).toBe(0);
  });

  test('countFitting(n sizes, size) is n, and n - 1 for a hair less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), size, (count, one) => {
        expect(countFitting(count * one, one)).toBe(count);
        expect(countFitting(count * one - one * 1e-6, one)).toBe(count - 1);
      }),
    );
  });
});

describe('countNeeded', () => {
  test('countNeeded(0.3, 0.1) is 3 and countNeeded(0, 5) is 0', () => {
    expect(Math.ceil((0.1 + 0.2) / 0.1)).toBe(4);
    expect(countNeeded(0.1 + 0.2, 0.1)).toBe(3);
    expect(countNeeded(0, 5)).toBe(0);
    expect(countNeeded(-1, 5)).toBe(0);
  });

  test('countNeeded(n sizes, size) is n, and n + 1 for a hair more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), size, (count, one) => {
        expect(countNeeded(count * one, one)).toBe(count);
        expect(countNeeded(count * one + one * 1e-6, one)).toBe(count + 1);
      }),
    );
  });

  test('countNeeded is countFitting, or one more, never less', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), size, (need, one) => {
        const more = countNeeded(need, one) - countFitting(need, one);
        expect(more === 0 || more === 1).toBe(true);
      }),
    );
  });
});
