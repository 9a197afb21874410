import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { speakLength } from '#core/speak-length.ts';

/** Written by hand from the trade's way of speaking, no source: what is said when cloth is asked for. */
const SPOKEN = [
  [0.125, 'yd', 'an eighth of a yard'],
  [0.25, 'yd', 'a quarter of a yard'],
  [0.375, 'yd', 'three eighths of a yard'],
  [0.5, 'yd', 'half a yard'],
  [0.625, 'yd', 'five eighths of a yard'],
  [0.75, 'yd', 'three quarters of a yard'],
  [0.875, 'yd', 'seven eighths of a yard'],
  [1, 'yd', 'one yard'],
  [1.125, 'yd', 'one and an eighth yards'],
  [1.5, 'yd', 'one and a half yards'],
  [2, 'yd', 'two yards'],
  [2.25, 'yd', 'two and a quarter yards'],
  [2.375, 'yd', 'two and three eighths yards'],
  [4.75, 'yd', 'four and three quarters yards'],
  [12.875, 'yd', 'twelve and seven eighths yards'],
  [20, 'yd', 'twenty yards'],
  [31.25, 'yd', 'thirty-one and a quarter yards'],
  [99.5, 'yd', 'ninety-nine and a half yards'],
  [120.5, 'yd', '120 and a half yards'],
  [0, 'yd', 'no yards'],
  [0.5, 'in', 'half an inch'],
  [0.125, 'in', 'an eighth of an inch'],
  [8.5, 'in', 'eight and a half inches'],
  [1, 'in', 'one inch'],
  [2.2, 'm', '2 m 20'],
  [2, 'm', '2 m'],
  [0.8, 'm', '80 cm'],
  [1.05, 'm', '1 m 05'],
  [2.455, 'm', '2 m 45.5'],
  [0, 'm', '0 cm'],
  [215, 'cm', '2 m 15'],
  [12.5, 'cm', '12.5 cm'],
  [3.999_99, 'm', '4 m'],
] as const;

describe('speakLength', () => {
  test.each(SPOKEN)('speakLength of %d %s is %j', (amount, unit, said) => {
    expect(speakLength({ amount, unit })).toBe(said);
  });

  test('speakLength of metres says what a reader of lengths reads back, where there are no metres left open', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (centimetres) => {
        const said = speakLength({ amount: centimetres / 100, unit: 'm' });
        const written = /m \d/.test(said) ? `${said} cm` : said;
        expect(readLength(written, 'cm')).toEqual({ ok: true, value: centimetres * 10 });
      }),
    );
  });

  test('speakLength says each eighth of a yard up to a hundred in words of its own', () => {
    const said = Array.from({ length: 800 }, (_, at) =>
      speakLength({ amount: (at + 1) / 8, unit: 'yd' }),
    );
    expect(new Set(said).size).toBe(800);
    expect(said.filter((words) => /\d|undefined|0/.test(words))).toEqual(['100 yards']);
  });
});
