import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leanOf, measureSkew } from '#core/wash/measure-skew.ts';

describe('measureSkew', () => {
  it('gives the worked values of the diagonal option of AATCC TM179 (formula from memory, values by arithmetic)', () => {
    expect(measureSkew(26, 25.5)).toBeCloseTo(1.9417, 4);
    expect(measureSkew(365, 350)).toBeCloseTo(4.1958, 4);
  });

  it('gives about d/L for a square of side L sheared by d, as plane geometry says', () => {
    const side = 10;
    const shear = 0.5;
    const ac = Math.hypot(side + shear, side);
    const bd = Math.hypot(side - shear, side);
    expect(ac).toBeCloseTo(14.5, 12);
    expect(measureSkew(ac, bd)).toBeCloseTo(4.997, 3);
  });

  it('is 0 for equal diagonals, turns its sign when they change places, and ignores the unit', () => {
    const length = fc.double({ min: 1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.constantFrom(2.54, 25.4), (ac, bd, unit) => {
        expect(measureSkew(ac, ac)).toBe(0);
        expect(measureSkew(ac, bd)).toBeCloseTo(-measureSkew(bd, ac), 9);
        expect(measureSkew(ac * unit, bd * unit)).toBeCloseTo(measureSkew(ac, bd), 9);
      }),
    );
  });
});

describe('leanOf', () => {
  it('is the shear of the square that had the skew, within a hundredth of it', () => {
    const skew = measureSkew(Math.hypot(10.5, 10), Math.hypot(9.5, 10));
    expect(leanOf(skew, 10)).toBeCloseTo(0.5, 2);
    expect(leanOf(-skew, 10)).toBe(leanOf(skew, 10));
  });
});
