import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LENGTH_LIMITS, type LengthLimit } from '#core/limits.ts';
import {
  isSound,
  keep,
  type Reading,
  readLengthField,
  readPlain,
  startReading,
  writeNumber,
  writeQuery,
} from '#core/wish/reading.ts';

describe('startReading', () => {
  test('startReading without a unit takes inches and says so', () => {
    const { unit, assumptions, kept } = startReading(undefined);
    expect(unit).toBe('in');
    expect(assumptions).toMatchObject([{ path: 'unit', value: 'in' }]);
    expect(kept).toEqual([]);
  });
});

describe('readLengthField', () => {
  const read = (given: number | string | undefined, reading: Reading = startReading('in')) => {
    const value = readLengthField(reading, {
      path: ['block', 'seam'],
      given,
      limit: 'seam',
      fallback: 1,
      why: 'because',
    });
    return { value, ...reading };
  };

  test('readLengthField keeps in the query what differs from the default', () => {
    expect(read('3/4')).toMatchObject({ value: 0.75, kept: [['block.seam', '0.75']] });
  });

  test('readLengthField tells a default, left out or spelt out in any way', () => {
    const left = read(undefined);
    expect(left).toMatchObject({ value: 1, kept: [] });
    expect(left.assumptions.at(-1)).toMatchObject({ path: 'block.seam', value: 1, why: 'because' });
    for (const given of [1, '1', '1 in', '2.54 cm', '25.4 mm']) expect(read(given)).toEqual(left);
  });

  test('readLengthField gives the fault of the length its own path', () => {
    expect(read('wide').faults).toEqual([
      { code: 'not-a-length', path: ['block', 'seam'], received: 'wide' },
    ]);
    expect(read('1,250').faults).toMatchObject([
      { code: 'unclear-comma', path: ['block', 'seam'] },
    ]);
    expect(read(' ').faults).toMatchObject([{ code: 'empty', path: ['block', 'seam'] }]);
  });

  test('readLengthField tells the range in the unit of the request, and what was written', () => {
    expect(read('0.1 in').faults).toEqual([
      { code: 'too-small', path: ['block', 'seam'], expected: '0.12 in', received: '0.1 in' },
    ]);
    expect(read(50, startReading('cm')).faults).toEqual([
      { code: 'too-large', path: ['block', 'seam'], expected: '10 cm', received: 50 },
    ]);
  });

  test('readLengthField takes its own advice: what it expected is within the range', () => {
    const limits = fc.constantFrom(...(Object.keys(LENGTH_LIMITS) as LengthLimit[]));
    fc.assert(
      fc.property(limits, fc.constantFrom('in' as const, 'cm' as const), (limit, unit) => {
        for (const given of [0, 100_000]) {
          const reading = startReading(unit);
          readLengthField(reading, { path: [], given, limit });
          const [fault] = reading.faults;
          if (fault === undefined) continue;
          const again = startReading(unit);
          readLengthField(again, { path: [], given: String(fault.expected), limit });
          expect(again.faults).toEqual([]);
        }
      }),
    );
  });

  test('readLengthField reads a length in cm and in inches as the same', () => {
    const inches = fc.integer({ min: 200, max: 1900 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(inches, (given) => {
        const cm = readLengthField(startReading('cm'), {
          path: [],
          given: `${given} in`,
          limit: 'cut',
        });
        expect(cm).toBeCloseTo(given * 2.54, 9);
      }),
    );
  });
});

describe('readPlain', () => {
  const read = (given: number | undefined) => {
    const reading = startReading('cm');
    const value = readPlain(reading, { path: ['spare'], given, fallback: 5, why: 'because' });
    return { value, ...reading };
  };

  test('readPlain keeps nine decimals in the value and in the query alike', () => {
    expect(read(0.12345678949)).toMatchObject({ value: 0.123456789 });
    expect(read(0.12345678949).kept.at(-1)).toEqual(['spare', '0.123456789']);
  });

  test('readPlain tells a default, left out or spelt out', () => {
    expect(read(undefined).assumptions).toMatchObject([{ path: 'spare', value: 5 }]);
    expect(read(5)).toEqual(read(undefined));
  });
});

describe('isSound', () => {
  test('isSound sees a fault at a place or inside it, and none beside or above it', () => {
    const reading = { faults: [{ code: 'empty', path: ['layers', 1, 'width'] }] } as const;
    expect(isSound(reading, ['layers'])).toBe(false);
    expect(isSound(reading, ['target'], ['layers', 1])).toBe(false);
    expect(isSound(reading, ['layers', 0], ['layers', 1, 'selvage'])).toBe(true);
    expect(isSound(reading, ['layers', 1, 'width', 'more'])).toBe(true);
  });
});

describe('keep', () => {
  test('keep writes numbers, truth values and text', () => {
    const reading = startReading('in');
    keep(reading, ['a', 0], 8.5);
    keep(reading, ['b'], true);
    keep(reading, ['c'], 'd e');
    expect(writeQuery(reading.kept)).toBe('a.0=8.5&b=true&c=d%20e');
  });
});

describe('writeNumber', () => {
  test('writeNumber is the shortest plain decimal', () => {
    expect([8.5, 100, 0, 0.1 + 0.2, 1e-7, -3, 1e6].map(writeNumber)).toEqual([
      '8.5',
      '100',
      '0',
      '0.3',
      '0.0000001',
      '-3',
      '1000000',
    ]);
  });

  test('writeNumber is read back as the number it wrote', () => {
    const numbers = fc.integer({ min: -1e12, max: 1e12 }).map((whole) => whole / 1e6);
    fc.assert(fc.property(numbers, (number) => Number(writeNumber(number)) === number));
  });
});

describe('writeQuery', () => {
  test('writeQuery encodes what would end or split a pair', () => {
    expect(writeQuery([['layers.0.prints.0.id', 'a&b=c ü']])).toBe(
      'layers.0.prints.0.id=a%26b%3Dc%20%C3%BC',
    );
    expect(writeQuery([])).toBe('');
  });
});
