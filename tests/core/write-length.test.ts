import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { writeEighths, writeExact, writeGap, writeLength } from '#core/write-length.ts';

const EIGHTHS = Array.from({ length: 1601 }, (_, index) => index / 8);

describe('writeLength', () => {
  test.each([
    [215.9, 'in', '8 1/2 in'],
    [215.9, 'cm', '21.6 cm'],
    [12.7, 'in', '1/2 in'],
    [25.4, 'in', '1 in'],
    [200, 'cm', '20 cm'],
    [0, 'in', '0 in'],
    [1066.8, 'in', '42 in'],
    [213.36, 'in', '8 3/8 in'],
  ] as const)('writeLength(%d, %s) is %s', (millimetres, unit, text) => {
    expect(writeLength(millimetres, unit)).toBe(text);
  });

  test('readLength(writeLength(x, in)) is x for every eighth of an inch up to 200', () => {
    for (const inches of EIGHTHS) {
      const read = readLength(writeLength(inches * 25.4, 'in'), 'cm');
      expect(read).toEqual({ ok: true, value: expect.closeTo(inches * 25.4, 9) });
    }
  });

  test('readLength(writeLength(x, cm)) is x for every millimetre up to 5 m', () => {
    for (let millimetres = 0; millimetres <= 5000; millimetres += 1) {
      expect(readLength(writeLength(millimetres, 'cm'), 'in')).toEqual({
        ok: true,
        value: millimetres,
      });
    }
  });

  test('writeLength is never farther off than a sixteenth of an inch or half a millimetre', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 6000, noNaN: true }), (millimetres) => {
        const inches = readLength(writeLength(millimetres, 'in'), 'in');
        const centimetres = readLength(writeLength(millimetres, 'cm'), 'cm');
        if (!inches.ok || !centimetres.ok) throw new Error('What is written must be readable');
        expect(Math.abs(inches.value - millimetres)).toBeLessThanOrEqual(25.4 / 16 + 1e-9);
        expect(Math.abs(centimetres.value - millimetres)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });
});

describe('writeGap', () => {
  test('writeGap(1, in) does not say that nothing is left', () => {
    expect(writeLength(1, 'in')).toBe('0 in');
    expect(writeGap(1, 'in')).toBe('less than 1/16 in');
    expect(writeGap(0.05, 'cm')).toBe('less than 0.01 cm');
  });

  test('writeGap never overstates what is left, by more than a ten-thousandth of a millimetre', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.6, max: 50, noNaN: true }),
        fc.constantFrom('in' as const, 'cm' as const),
        (millimetres, unit) => {
          const told = readLength(writeGap(millimetres, unit), unit);
          const gap = told.ok ? told.value : Number.NaN;
          expect(gap).toBeLessThanOrEqual(millimetres + 1e-4);
          expect(millimetres - gap).toBeLessThan(25.4 / 16);
        },
      ),
    );
  });

  test('writeGap of a sixteenth that lost its last bits is a sixteenth', () => {
    expect(writeGap(12.7 - 11.1125, 'in')).toBe('1/16 in');
  });
});

describe('writeEighths', () => {
  test.each([
    [2.375, '2 3/8'],
    [0.75, '3/4'],
    [0.5, '1/2'],
    [3, '3'],
    [0, '0'],
    [-1.25, '-1 1/4'],
    [-0.01, '0'],
    [7.99, '8'],
  ])('writeEighths(%d) is %s', (value, text) => {
    expect(writeEighths(value)).toBe(text);
  });

  test('writeEighths writes each of the eighths up to 200 in lowest terms and apart from all others', () => {
    const texts = EIGHTHS.map(writeEighths);
    expect(new Set(texts).size).toBe(1601);
    for (const text of texts) expect(text).toMatch(/^(\d+|(\d+ )?(1\/2|[13]\/4|[1357]\/8))$/);
  });
});

describe('writeExact', () => {
  test('writeExact keeps what is no eighth, so that nobody cuts 8 1/4 for 8.3', () => {
    expect(writeExact(8.3 * 25.4, 'in')).toBe('8.3 in');
    expect(writeExact((3 / 16) * 25.4, 'in')).toBe('3/16 in');
    expect(writeExact(0.2 * 25.4, 'in')).toBe('0.2 in');
    expect(writeExact(6.25, 'cm')).toBe('0.63 cm');
    expect(writeExact(12.5, 'cm')).toBe('1.25 cm');
  });

  test('writeExact writes every eighth up to 200 in as writeLength does', () => {
    for (let eighths = 1; eighths <= 1600; eighths += 1) {
      const length = eighths * 3.175;
      expect(writeExact(length, 'in')).toBe(writeLength(length, 'in'));
    }
  });
});
