import { describe, expect, test } from 'vitest';
import { LENGTH_LIMITS } from '#core/limits.ts';
import { usualWidths } from '#core/tables/bolt-widths.ts';

describe('usualWidths', () => {
  test.each(['in', 'cm'] as const)(
    'usualWidths(%j) rise, and are widths that are taken',
    (unit) => {
      const widths = usualWidths(unit);
      const scale = unit === 'in' ? 25.4 : 10;
      expect(widths.toSorted((one, other) => one - other)).toEqual(widths);
      for (const width of widths) {
        expect(width * scale).toBeGreaterThan(LENGTH_LIMITS.rollWidth.least);
        expect(width * scale).toBeLessThan(LENGTH_LIMITS.rollWidth.most);
      }
    },
  );

  // The trade sells the same looms' widths under both units: 44 in is sold as 110 cm, 58 as 150, 108 as 280 (from memory).
  test('usualWidths in inches and centimetres are of the same looms, within a tenth', () => {
    for (const width of usualWidths('cm')) {
      const near = usualWidths('in').some((inches) => Math.abs(inches * 2.54 - width) < width / 10);
      expect(near).toBe(true);
    }
  });
});
