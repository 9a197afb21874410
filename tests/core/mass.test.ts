import { describe, expect, test } from 'vitest';
import { GRAMS, massUnit } from '#core/mass.ts';

describe('massUnit', () => {
  test('massUnit(in) is lb and massUnit(cm) is kg', () => {
    expect(massUnit('in')).toBe('lb');
    expect(massUnit('cm')).toBe('kg');
  });
});

describe('GRAMS', () => {
  test('GRAMS: 1 kg is 2.2046 lb', () => {
    expect(GRAMS.kg / GRAMS.lb).toBeCloseTo(2.2046226, 7);
  });
});
