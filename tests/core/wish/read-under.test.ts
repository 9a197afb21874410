import { describe, expect, test } from 'vitest';
import { readUnder, takeUnder } from '#core/wish/read-under.ts';
import { keep, readLengthField, startReading } from '#core/wish/reading.ts';

describe('readUnder', () => {
  test('readUnder puts faults, assumptions and the query below a place', () => {
    const reading = startReading('cm');
    const value = readUnder(reading, ['shape', 'target'], (inner) => {
      readLengthField(inner, { path: ['width'], given: 'broad', limit: 'targetSide' });
      readLengthField(inner, {
        path: ['seam'],
        given: undefined,
        limit: 'seam',
        fallback: 2,
        why: 'a',
      });
      return readLengthField(inner, { path: ['height'], given: '1 m', limit: 'targetSide' });
    });
    expect(value).toBe(100);
    expect(reading.faults).toMatchObject([
      { code: 'not-a-length', path: ['shape', 'target', 'width'] },
    ]);
    expect(reading.assumptions).toMatchObject([{ path: 'shape.target.seam', value: 2 }]);
    expect(reading.kept).toEqual([
      ['unit', 'cm'],
      ['shape.target.height', '100'],
    ]);
  });
});

describe('takeUnder', () => {
  test('takeUnder keeps what was there and adds at the end', () => {
    const reading = startReading('in');
    keep(reading, ['kits'], 3);
    takeUnder(reading, ['plan'], { faults: [], assumptions: [], kept: [['washes', '2']] });
    expect(reading.kept).toEqual([
      ['kits', '3'],
      ['plan.washes', '2'],
    ]);
  });
});
