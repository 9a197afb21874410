import { expect, test } from 'vitest';
import { sayMeasure } from '#core/drawing/steps/say-measure.ts';

test('sayMeasure sets fractions of an inch, and centimetres as decimals', () => {
  expect(sayMeasure(215.9, 'in')).toBe('8½ in');
  expect(sayMeasure(215.9, 'cm')).toBe('21.59 cm');
});
