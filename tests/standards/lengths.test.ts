/**
 * Lengths against the definitions they rest on.
 * - International yard and pound agreement, 1959; NIST SP 811, appendix B: 1 in = 25.4 mm and
 *   1 yd = 0.9144 m, both exactly. From memory.
 * - Widths of cloth in inches and centimetres: common practice, no source; their conversions follow
 *   from the inch.
 * - Fat quarter of 18 by 22 in from half a yard of 44 in: common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { fromMillimetres, MILLIMETRES, toMillimetres } from '#core/length.ts';
import { readLength } from '#core/read-length.ts';

describe('inch and yard', () => {
  test('MILLIMETRES: an inch is 25.4 mm exactly, a yard 914.4 mm exactly (from memory)', () => {
    expect(MILLIMETRES.in).toBe(25.4);
    expect(MILLIMETRES.yd).toBe(914.4);
  });

  test('toMillimetres(4.5, in) is an eighth of a yard, 11.43 cm (follows)', () => {
    expect(toMillimetres(4.5, 'in')).toBe(MILLIMETRES.yd / 8);
    expect(readLength('1/8 yd', 'in')).toEqual({ ok: true, value: 114.3 });
    expect(readLength('11.43', 'cm')).toEqual({ ok: true, value: 114.3 });
  });

  test('readLength(39.3700787402 in) is a metre to a ten-millionth of a millimetre (follows)', () => {
    const read = readLength('39.3700787402', 'in');
    expect(read).toEqual({ ok: true, value: expect.closeTo(1000, 7) });
  });
});

describe('widths of cloth', () => {
  test.each([
    [42, 106.68],
    [44, 111.76],
    [45, 114.3],
    [60, 152.4],
    [108, 274.32],
  ])(
    'fromMillimetres(%d in) is %d cm (widths: common practice, no source)',
    (inches, centimetres) => {
      expect(fromMillimetres(toMillimetres(inches, 'in'), 'cm')).toBe(centimetres);
    },
  );

  test('a fat quarter, 18 by 22 in, has the area of a quarter yard of 44 in (common practice)', () => {
    const side = (inches: number) => toMillimetres(inches, 'in');
    expect(side(18) * side(22)).toBeCloseTo((MILLIMETRES.yd / 4) * side(44), 6);
  });
});
