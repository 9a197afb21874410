import { expect, test } from 'vitest';
import { place } from '#core/drawing/shape.ts';

test('place(millimetres) moves nothing by more than a twentieth of a millimetre', () => {
  for (const at of [0, 25.44, -3.26, 1270.05, 99.999]) {
    expect(Math.abs(place(at) - at)).toBeLessThanOrEqual(0.05 + 1e-9);
    expect(String(place(at))).toMatch(/^-?\d+(\.\d)?$/);
  }
});
