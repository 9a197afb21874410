import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromMillimetres, MILLIMETRES, roundTo, tidy, toMillimetres } from '#core/length.ts';

const unit = fc.constantFrom('in' as const, 'cm' as const);
/** What people give: up to four decimals. */
const plain = fc.integer({ min: 0, max: 50_000_000 }).map((ten) => ten / 10_000);

describe('MILLIMETRES', () => {
  test('MILLIMETRES agree with each other: 12 in a foot, 3 ft a yard, 10 mm a cm, 100 cm a metre', () => {
    expect(MILLIMETRES.ft).toBe(tidy(12 * MILLIMETRES.in));
    expect(MILLIMETRES.yd).toBe(tidy(3 * MILLIMETRES.ft));
    expect(MILLIMETRES.cm).toBe(10 * MILLIMETRES.mm);
    expect(MILLIMETRES.m).toBe(100 * MILLIMETRES.cm);
  });
});

describe('toMillimetres', () => {
  test('toMillimetres(10, in) is 254', () => {
    expect(toMillimetres(10, 'in')).toBe(254);
  });

  test('toMillimetres(8.4, in) drops the last bits of the product', () => {
    expect(8.4 * 25.4).not.toBe(213.36);
    expect(toMillimetres(8.4, 'in')).toBe(213.36);
  });

  test('toMillimetres(x, in) equals toMillimetres(2.54·x, cm): one length, one number', () => {
    fc.assert(
      fc.property(plain, (inches) => {
        expect(toMillimetres(tidy(inches * 2.54), 'cm')).toBe(toMillimetres(inches, 'in'));
      }),
    );
  });

  test('toMillimetres grows with its number', () => {
    fc.assert(
      fc.property(plain, unit, (value, inUnit) => {
        expect(toMillimetres(value + 0.0001, inUnit)).toBeGreaterThan(toMillimetres(value, inUnit));
      }),
    );
  });
});

describe('fromMillimetres', () => {
  test('fromMillimetres(215, in) keeps 4 decimals unless told', () => {
    expect(fromMillimetres(215, 'in')).toBe(8.4646);
    expect(fromMillimetres(215, 'in', 1)).toBe(8.5);
  });

  test('fromMillimetres(toMillimetres(x)) is x for every x of four decimals', () => {
    fc.assert(
      fc.property(plain, unit, (value, inUnit) => {
        expect(fromMillimetres(toMillimetres(value, inUnit), inUnit)).toBe(value);
      }),
    );
  });
});

describe('roundTo', () => {
  test.each([
    [2.00005, 4, 2.0001],
    [1.005, 2, 1.01],
    [1.45, 1, 1.5],
    [-1.005, 2, -1.01],
    [0.00004, 4, 0],
    [12345.6789, 0, 12346],
    [0, 3, 0],
  ])('roundTo(%d, %d) is %d, half away from zero', (value, digits, expected) => {
    expect(roundTo(value, digits)).toBe(expected);
  });

  test('roundTo never gives minus zero', () => {
    expect(Object.is(roundTo(-0.00001, 2), 0)).toBe(true);
    expect(Object.is(roundTo(-0, 2), 0)).toBe(true);
  });

  test('roundTo is odd, stays within half a step, and is settled by one go', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, digits) => {
          const rounded = roundTo(value, digits);
          expect(Math.abs(rounded - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-8);
          expect(roundTo(rounded, digits)).toBe(rounded);
          expect(roundTo(-value, digits) + rounded).toBe(0);
        },
      ),
    );
  });
});

describe('roundTo of large numbers', () => {
  test('roundTo(x, 9) leaves whole and eighth numbers up to 500,000 as they are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4_000_000 }), (eighths) => {
        expect(roundTo(eighths / 8, 9)).toBe(eighths / 8);
      }),
    );
  });
});

describe('tidy', () => {
  test('tidy(0.1 + 0.2) is 0.3', () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(tidy(0.1 + 0.2)).toBe(0.3);
  });

  test('tidy moves no length up to a kilometre by more than a billionth of a millimetre', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(tidy(value) - value)).toBeLessThan(1e-9);
        expect(tidy(tidy(value))).toBe(tidy(value));
      }),
    );
  });
});
