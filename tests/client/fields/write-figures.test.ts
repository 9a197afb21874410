import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { readLength } from '#core/read-length.ts';
import { writeEighths } from '#core/write-length.ts';
import {
  writeBound,
  writeEntry,
  writeHours,
  writeMeasure,
} from '../../../client/fields/write-figures.ts';

describe('writeMeasure', () => {
  test('writeMeasure sets inches and yards to the nearest eighth', () => {
    expect(writeMeasure('en', 'in', 49.6854, 59.24)).toBe('49⅝ × 59¼\u00a0in');
    expect(writeMeasure('en', 'yd', 1.125)).toBe('1⅛\u00a0yd');
  });

  test('writeMeasure writes eighths as the core does, once that is set in signs', () => {
    const values = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(values, (value) => {
        const written = typesetFractions(writeEighths(value));
        expect(writeMeasure('en', 'in', value)).toBe(`${written}\u00a0in`);
      }),
    );
    expect(writeMeasure('en', 'in', 0, 0.01, -0.5)).toBe('0 × 0 × -½\u00a0in');
  });

  test('writeMeasure writes decimals in the manner of the language', () => {
    expect(writeMeasure('en', 'cm', 121.55)).toBe('121.6\u00a0cm');
    expect(writeMeasure('de', 'cm', 1121.55)).toBe('1.121,6\u00a0cm');
    expect(writeMeasure('en', 'kg', 2)).toBe('2\u00a0kg');
  });
});

describe('writeBound', () => {
  test.each([
    ['196.85 in', Math.floor, '196¾ in'],
    ['0.0394 in', Math.ceil, '⅛ in'],
    ['0.05 in', Math.floor, '0.05 in'],
    ['0.5 in', Math.floor, '½ in'],
    ['500 cm', Math.floor, '500 cm'],
    ['26', Math.floor, '26'],
    ['', Math.floor, ''],
  ])('writeBound(%j, %o) is %j', (bound, round, said) => {
    expect(writeBound(bound, round)).toBe(said);
  });
});

describe('writeHours', () => {
  test.each([
    [1, '½\u00a0h'],
    [44, '½\u00a0h'],
    [45, '1\u00a0h'],
    [276, '4½\u00a0h'],
    [6000, '100\u00a0h'],
  ])('writeHours(%d) is %s', (minutes, hours) => {
    expect(writeHours(minutes)).toBe(hours);
  });
});

describe('writeEntry', () => {
  test('writeEntry gives back what was typed as it was', () => {
    expect(writeEntry('8 1/2 or so', 'in')).toBe('8 1/2 or so');
  });

  test('writeEntry of a number is read as that number, to four decimals', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom('in', 'cm'),
        (value, unit) => {
          const read = readLength(writeEntry(value, unit), unit);
          const size = unit === 'in' ? 25.4 : 10;
          expect(read.ok && Math.abs(read.value / size - value)).toBeLessThanOrEqual(5.1e-5);
        },
      ),
    );
  });

  test('writeEntry sets eighths of an inch as fractions and nothing in centimetres', () => {
    expect(writeEntry(0.375, 'in')).toBe('⅜');
    expect(writeEntry(12, 'in')).toBe('12');
    expect(writeEntry(21.5, 'cm')).toBe('21.5');
  });
});
