import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commonStep, raiseToStep } from '#core/cloth/strips/common-step.ts';

describe('commonStep', () => {
  test('commonStep of eighths of an inch is the greatest number of eighths in all of them', () => {
    const divide = (one: number, other: number): number =>
      other === 0 ? one : divide(other, one % other);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 8, max: 400 }), { minLength: 1 }), (eighths) => {
        const step = commonStep(eighths.map((count) => count * 3.175));
        expect(step / 3.175).toBeCloseTo(eighths.reduce(divide), 9);
      }),
    );
  });

  test('commonStep(a 64th of an inch and an inch) is a 64th', () => {
    expect(commonStep([25.4 / 64, 25.4])).toBeCloseTo(0.396875, 12);
  });

  test('commonStep of lengths that share none of a thousandth of a millimetre is 0', () => {
    expect(commonStep([100 / 3, 100])).toBe(0);
    expect(commonStep([100, 100.000_1])).toBe(0);
    expect(commonStep([])).toBe(0);
  });
});

describe('raiseToStep', () => {
  test('raiseToStep gives the multiple at or above, and leaves a multiple alone', () => {
    expect(raiseToStep(25, 10)).toBe(30);
    expect(raiseToStep(30, 10)).toBe(30);
    expect(raiseToStep(30 + 1e-9, 10)).toBe(30);
    expect(raiseToStep(25, 0)).toBe(25);
  });
});
