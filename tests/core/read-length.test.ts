import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { SOUND_ENTRIES, WRONG_ENTRIES } from '../support/entry-table.ts';

/** Numbers as JSON has them. */
const NUMBERS = [
  [8.5, 'in', 215.9],
  [21.5, 'cm', 215],
  [0, 'in', 0],
] as const;

const WRONG_NUMBERS = [
  [Number.NaN, 'not-a-length'],
  [Number.POSITIVE_INFINITY, 'not-a-length'],
  [1e308, 'not-a-length'],
  [Number.NEGATIVE_INFINITY, 'negative-length'],
  [-1, 'negative-length'],
  [-1e-9, 'negative-length'],
] as const;

function millimetresOf(text: string, unit: 'in' | 'cm' = 'in'): number {
  const read = readLength(text, unit);
  if (!read.ok) throw new Error(`${text} was refused`);
  return read.value;
}

describe('readLength', () => {
  test.each([...NUMBERS, ...SOUND_ENTRIES])(
    'readLength(%j, %s) is %d mm',
    (given, unit, millimetres) => {
      expect(readLength(given, unit)).toEqual({ ok: true, value: millimetres });
    },
  );

  test.each([...WRONG_NUMBERS, ...WRONG_ENTRIES])(
    'readLength(%j) is refused as %s',
    (given, code) => {
      expect(readLength(given, 'in')).toEqual({
        ok: false,
        faults: [{ code, path: [], received: given }],
      });
    },
  );

  test('the table of entries has no row twice', () => {
    const typed = [...SOUND_ENTRIES, ...WRONG_ENTRIES].map(([text]) => text);
    expect(typed.filter((text, at) => typed.indexOf(text) !== at)).toEqual([]);
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
