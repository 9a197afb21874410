import { describe, expect, test } from 'vitest';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { readLength } from '#core/read-length.ts';
import { writeLength } from '#core/write-length.ts';

describe('typesetFractions', () => {
  test('typesetFractions(writeLength(mm)) reads as the same length, for every eighth up to 40 in', () => {
    for (let eighths = 1; eighths <= 320; eighths += 1) {
      const written = writeLength(eighths * 3.175, 'in');
      expect(readLength(typesetFractions(written), 'in')).toEqual(readLength(written, 'in'));
      expect(typesetFractions(written)).not.toContain('/');
    }
  });

  test('typesetFractions leaves needles, dates and other fractions alone', () => {
    for (const text of ['A 100/16 needle', '90/14', '1/3', '2/4', '2022/1/2', '11/8'])
      expect(typesetFractions(text)).toBe(text);
  });

  test('typesetFractions finds each fraction in a sentence', () => {
    expect(typesetFractions('1/2 in deep, 1/4 in apart, within 3 3/8 in')).toBe(
      '½ in deep, ¼ in apart, within 3⅜ in',
    );
  });
});
