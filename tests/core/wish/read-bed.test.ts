import { describe, expect, test } from 'vitest';
import { findSize } from '#core/tables/sizes.ts';
import { readBed } from '#core/wish/read-bed.ts';

describe('readBed', () => {
  test.each([
    ['mattress 90 by 200 cm', 'cm', { width: 90, length: 200 }],
    ['a 60 x 80 mattress', 'in', { width: 60, length: 80 }],
    ['mattress is 60 wide and 80 long, drop 10', 'in', { width: 60, length: 80, drop: 10 }],
    ['60 by 80, 30 cm drop', 'cm', { width: 60, length: 80, drop: 30 }],
    [
      '60 by 80 mattress, 12 inch drop, 8 inches at the foot',
      'in',
      { width: 60, length: 80, drop: 12, footDrop: 8 },
    ],
    ['twin xl with a 12 inch drop', 'in', { width: '38 in', length: '80 in', drop: 12 }],
    ['crib, 10 inch drop', 'in', { width: 28, length: 52.375, drop: 10 }],
  ])('readBed understands “%s”', (words, unit, bed) => {
    expect(readBed(words, 'in')).toMatchObject({ unit, target: { bed } });
  });

  test('readBed takes the mattress of the table for a named bed with a drop, of its region', () => {
    for (const [words, unit, region] of [
      ['king, 12 inch drop', 'in', 'us'],
      ['UK king, 12 inch drop', 'in', 'uk'],
      ['king, 30 cm drop', 'cm', 'eu'],
    ] as const) {
      const row = findSize('king', region);
      const read = readBed(words, unit);
      if (typeof read !== 'object' || !('bed' in read.target)) throw new Error(words);
      const { width, length } = read.target.bed;
      const mm = (side: number | string) =>
        typeof side === 'number'
          ? side * (unit === 'in' ? 25.4 : 10)
          : Number.parseFloat(side) * 10;
      expect(mm(width)).toBeCloseTo(row?.width ?? 0, 6);
      expect(mm(length)).toBeCloseTo(row?.height ?? 0, 6);
    }
  });

  test('readBed leaves a name that its region does not know, so that the plan says so', () => {
    const target = { size: 'queen', region: 'uk' };
    expect(readBed('UK queen, drop 12 inches', 'in')).toMatchObject({ unit: 'in', target });
  });

  test('readBed finds a drop over no bed unfit', () => {
    expect(readBed('throw with 15 inch drop', 'in')).toBe('unfit');
    expect(readBed('something with 15 inch drop', 'in')).toBe('unfit');
  });

  test.each([
    '60 by 80',
    'queen',
    '80 wide, 60 drop',
    'quilt 40 by 50, mattress 90 by 200',
    '90 x 108 quilt for a queen mattress',
    'quilt 90 by 108 for a 60 by 80 mattress',
    'a wall hanging 40 by 50',
  ])('readBed finds no bed in “%s”', (words) => {
    expect(readBed(words, 'in')).toBeUndefined();
  });
});
