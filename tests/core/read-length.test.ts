import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';

/** Spelling, unit of a bare number, millimetres. */
const RIGHT: readonly (readonly [number | string, 'in' | 'cm', number])[] = [
  [8.5, 'in', 215.9],
  [21.5, 'cm', 215],
  [0, 'in', 0],
  ['8.5', 'in', 215.9],
  ['8,5', 'in', 215.9],
  ['21,5', 'cm', 215],
  ['.5', 'in', 12.7],
  [',5', 'in', 12.7],
  ['5.', 'in', 127],
  ['007', 'in', 177.8],
  ['0,125', 'in', 3.175],
  ['1000,500', 'cm', 10_005],
  ['1.000', 'cm', 10],
  ['3/8', 'in', 9.525],
  ['3 / 8', 'in', 9.525],
  ['13/16', 'in', 20.6375],
  ['11/8', 'in', 34.925],
  ['17/2', 'in', 215.9],
  ['0/3', 'in', 0],
  ['8 1/2', 'in', 215.9],
  ['8  1/2', 'in', 215.9],
  [' 8 1/2 ', 'in', 215.9],
  ['8-1/2', 'in', 215.9],
  ['8–1/2', 'in', 215.9],
  ['8\u20111/2', 'in', 215.9],
  ['8- 1/2', 'in', 215.9],
  ['8 1⁄2', 'in', 215.9],
  ['8 1∕2', 'in', 215.9],
  ['8\u00a01/2', 'in', 215.9],
  ['8\u202f1/2', 'in', 215.9],
  ['8\u20091/2', 'in', 215.9],
  ['8\t1/2', 'in', 215.9],
  ['8½', 'in', 215.9],
  ['8 ½', 'in', 215.9],
  ['8-½', 'in', 215.9],
  ['½', 'in', 12.7],
  ['8⅜', 'in', 212.725],
  ['⅚ yd', 'in', 762],
  ['８．５', 'in', 215.9],
  ['8 １／２', 'in', 215.9],
  ['8 1/2 in', 'cm', 215.9],
  ['8½in', 'cm', 215.9],
  ['8.5 IN', 'cm', 215.9],
  ['8 inches', 'cm', 203.2],
  ['1 inch', 'cm', 25.4],
  ['8 ins', 'cm', 203.2],
  ['8 in.', 'cm', 203.2],
  ['8 1/2"', 'cm', 215.9],
  ['8½”', 'cm', 215.9],
  ['8½“', 'cm', 215.9],
  ['8″', 'cm', 203.2],
  ["8''", 'cm', 203.2],
  ['8’’', 'cm', 203.2],
  ["4'", 'in', 1219.2],
  ['4’', 'in', 1219.2],
  ['4′', 'in', 1219.2],
  ['4 ft', 'in', 1219.2],
  ['1 foot', 'in', 304.8],
  ['4 feet 2 inches', 'in', 1270],
  ['4\' 2"', 'in', 1270],
  ['4\'2"', 'in', 1270],
  ['4\'-2"', 'in', 1270],
  ['4’ 2 ½”', 'in', 1282.7],
  ['4 ft 2 1/2 in', 'in', 1282.7],
  ['2 ft. 3 in.', 'in', 685.8],
  ['4 ft, 2 in', 'in', 1270],
  ['4ft .5in', 'in', 1231.9],
  ['0.75 yd', 'cm', 685.8],
  ['3/4 yard', 'cm', 685.8],
  ['¾yd', 'cm', 685.8],
  ['2 1/2 yds', 'cm', 2286],
  ['1 yd 9 in', 'cm', 1143],
  ['1 yard 1 foot 1 inch', 'cm', 1244.6],
  ['21.5 cm', 'in', 215],
  ['21,5cm', 'in', 215],
  ['20 centimetres', 'in', 200],
  ['20 centimeters', 'in', 200],
  ['215 mm', 'in', 215],
  ['215 millimetres', 'in', 215],
  ['2 m', 'in', 2000],
  ['1,5 m', 'in', 1500],
  ['1.1 metres', 'in', 1100],
  ['2m 30cm', 'in', 2300],
  ['2 m 3 cm 5 mm', 'in', 2035],
];

const WRONG: readonly (readonly [number | string, string])[] = [
  ['', 'empty'],
  ['   ', 'empty'],
  ['\u00a0', 'empty'],
  ['1,000', 'unclear-comma'],
  ['8,125', 'unclear-comma'],
  ['12,345.5', 'unclear-comma'],
  ['1,234,567', 'unclear-comma'],
  ['1,200 mm', 'unclear-comma'],
  [Number.NaN, 'not-a-length'],
  [Number.POSITIVE_INFINITY, 'not-a-length'],
  [Number.NEGATIVE_INFINITY, 'not-a-length'],
  [-1, 'not-a-length'],
  [-1e-9, 'not-a-length'],
  [1e308, 'not-a-length'],
  ['9'.repeat(400), 'not-a-length'],
  ['1e5', 'not-a-length'],
  ['0x10', 'not-a-length'],
  ['-3', 'not-a-length'],
  ['−3', 'not-a-length'],
  ['–3', 'not-a-length'],
  ['-½', 'not-a-length'],
  ['+3', 'not-a-length'],
  ['3/0', 'not-a-length'],
  ['1 3/0', 'not-a-length'],
  ['1 1', 'not-a-length'],
  ['1 000', 'not-a-length'],
  ['1/2/3', 'not-a-length'],
  ['1 1/2 1/2', 'not-a-length'],
  ['1½½', 'not-a-length'],
  ['½ 1', 'not-a-length'],
  ['8.5 1/2', 'not-a-length'],
  ['1/2.5', 'not-a-length'],
  ['8 - 1/2', 'not-a-length'],
  ['8--1/2', 'not-a-length'],
  ['8.5.5', 'not-a-length'],
  ['8,5,5', 'not-a-length'],
  ['1.000,5', 'not-a-length'],
  ['.', 'not-a-length'],
  ['/', 'not-a-length'],
  ['8 .', 'not-a-length'],
  ['8 in..', 'not-a-length'],
  ['NaN', 'not-a-length'],
  ['Infinity', 'not-a-length'],
  ['null', 'not-a-length'],
  ['in', 'not-a-length'],
  ['"', 'not-a-length'],
  ['eight', 'not-a-length'],
  ['8 ells', 'not-a-length'],
  ['8 constructor', 'not-a-length'],
  ['in 8', 'not-a-length'],
  ['8 in in', 'not-a-length'],
  ['8 in wide', 'not-a-length'],
  ['40x50', 'not-a-length'],
  ['2" 4\'', 'not-a-length'],
  ['5 in 5 in', 'not-a-length'],
  ["4' 2", 'not-a-length'],
  ['8 1/2 9 in', 'not-a-length'],
  ['4 ft -2 in', 'not-a-length'],
  ['8 in,', 'not-a-length'],
  ['²⁄₃', 'not-a-length'],
  ['8²', 'not-a-length'],
  ['٨', 'not-a-length'],
];

function millimetresOf(text: string, unit: 'in' | 'cm' = 'in'): number {
  const read = readLength(text, unit);
  if (!read.ok) throw new Error(`${text} was refused`);
  return read.value;
}

describe('readLength', () => {
  test.each(RIGHT)('readLength(%j, %s) is %d mm', (given, unit, millimetres) => {
    expect(readLength(given, unit)).toEqual({ ok: true, value: millimetres });
  });

  test.each(WRONG)('readLength(%j) is refused as %s', (given, code) => {
    expect(readLength(given, 'in')).toEqual({
      ok: false,
      faults: [{ code, path: [], received: given }],
    });
  });

  test('readLength reads every fraction of the inch down to the 64th, alone and after a whole', () => {
    for (const below of [2, 4, 8, 16, 32, 64]) {
      for (let above = 1; above < below; above += 1) {
        expect(millimetresOf(`${above}/${below}`)).toBeCloseTo((25.4 * above) / below, 10);
        expect(millimetresOf(`11 ${above}/${below}"`)).toBeCloseTo(25.4 * (11 + above / below), 10);
      }
    }
  });

  test('readLength gives one number for one length in inches, feet, yards and centimetres', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (hundredths) => {
        const yards = `${hundredths / 100} yd`;
        const [inches, feet] = [(hundredths * 36) / 100, (hundredths * 3) / 100];
        const centimetres = (hundredths * 9144) / 10_000;
        expect(millimetresOf(`${feet}'`)).toBe(millimetresOf(yards));
        expect(millimetresOf(`${inches}`, 'in')).toBe(millimetresOf(yards));
        expect(millimetresOf(`${centimetres}`, 'cm')).toBe(millimetresOf(yards));
      }),
    );
  });

  test('readLength of a number and of the same number as text agree', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (ten) => {
        const number = ten / 10_000;
        expect(readLength(`${number}`, 'in')).toEqual(readLength(number, 'in'));
      }),
    );
  });

  test('readLength of a decimal comma equals that of a point, where not three digits follow', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: 9999 }),
        fc.stringMatching(/^(\d{1,2}|\d{4,6})$/),
        (whole, digits) => {
          expect(readLength(`${whole},${digits}`, 'cm')).toEqual(
            readLength(`${whole}.${digits}`, 'cm'),
          );
        },
      ),
    );
  });

  test('readLength never throws and never gives less than nothing, whatever is typed', () => {
    const sign = fc.constantFrom(...'0123456789 .,/-\'"½⅜inftydcm’”\u00a0x');
    fc.assert(
      fc.property(fc.string({ unit: sign, maxLength: 32 }), (text) => {
        const read = readLength(text, 'in');
        const isSound = read.ok
          ? Number.isFinite(read.value) && read.value >= 0
          : read.faults.length === 1;
        expect(isSound).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('readLength refuses texts of a hundred thousand signs without losing itself in them', () => {
    for (const sign of ['1', ' 1', '1-', '1/', '1,', "1'", '1 in ']) {
      expect(readLength(sign.repeat(100_000), 'in').ok).toBe(false);
    }
  });
});
