import { describe, expect, test } from 'vitest';
import { readTerms } from '#core/read-terms.ts';

/** The units of the international agreement of 1959 and of the SI, in millimetres. */
const UNITS = [
  ['in inch " zoll pulgada pulg po pouce', 25.4],
  ["ft foot feet ' fuß pie pied", 304.8],
  ['yd yard yarda verge', 914.4],
  ['mm millimeter milímetro millimètre', 1],
  ['cm zentimeter centímetro centimètre', 10],
  ['m meter metro mètre', 1000],
] as const;

describe('readTerms', () => {
  test.each(UNITS)('readTerms takes each of %j for %d mm', (words, millimetres) => {
    for (const word of words.split(' ')) expect(readTerms(`1 ${word}`, 'in')).toBe(millimetres);
  });

  test.each([
    ['1.250,5', 1250.5],
    ['1,250.5', 1250.5],
    ['1.234.567,25', 1_234_567.25],
    ['1,234,567', 1_234_567],
    ['1.250', 1.25],
  ])('readTerms(%j mm) is %d', (number, millimetres) => {
    expect(readTerms(`${number} mm`, 'in')).toBe(millimetres);
  });

  test.each([['1.25,5'], ['1.250.5'], ['0.250,5'], ['1,25.0'], [''], ['3/0'], ['5 in 5 in']])(
    'readTerms(%j) is nothing',
    (text) => {
      expect(readTerms(text, 'in')).toBeUndefined();
    },
  );
});
