import { describe, expect, test } from 'vitest';
import { findRow, tell } from '../../support/tell-answer.ts';

const ROLL =
  'fabrics.0.id=Fog%20flannel&fabrics.0.width=42&fabrics.0.pieces.0.id=backing' +
  '&fabrics.0.pieces.0.width=8.5&fabrics.0.pieces.0.length=8.5&fabrics.0.pieces.0.count=42';

describe('tellYardage', () => {
  test('tells what to buy and how it is cut', () => {
    const told = tell('yardage', ROLL);
    // 42 squares of 8 1/2 in, 4 across 41 in: 11 strips, 93 1/2 in and an inch to square up, 2 5/8 yd.
    expect(told.title).toBe('Cloth to buy: Fog flannel, 2 5/8 yd');
    expect(findRow(told, 'Cut into')).toBe('94 1/2 in');
    expect(findRow(told, '10 strips of 8 1/2 in')).toBe('each gives 4 of backing');
    expect(findRow(told, '1 strip of 8 1/2 in')).toBe('each gives 2 of backing');
    expect(told.image).toBe(`/v1/yardage.svg?${ROLL}`);
  });
  test('says whether the end of the bolt is enough, and what it gives if not', () => {
    const enough = tell('yardage', `${ROLL}&fabrics.0.lengthLeft=100`);
    expect(findRow(enough, 'Is what is there enough')).toBe('Yes');
    const short = tell('yardage', `${ROLL}&fabrics.0.lengthLeft=72`);
    expect(findRow(short, 'Is what is there enough')).toBe('No, it gives 32 of backing');
  });
});
