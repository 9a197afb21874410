import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/stash/en.ts';

describe('the words of stash in English', () => {
  test.each([
    [['top'], 'More print would make it larger.'],
    [['top', 'backing'], 'More print and backing would make it larger.'],
    [['shape'], 'There is cloth for more blocks, but not for a whole row in this shape.'],
    [[], ''],
  ] as const)('en.limited(%j) is %j', (limits, said) => {
    expect(en.limited(limits)).toBe(said);
  });

  test.each([
    [0, 0, 'No print meets itself.'],
    [0, 4, 'No print shares a side with itself; 4 corners meet.'],
    [1, 4, 'Prints share 1 side with themselves.'],
  ])('en.touching(%i, %i) is %j', (sides, corners, said) => {
    expect(en.touching(sides, corners)).toBe(said);
  });

  test('en counts squares and pieces', () => {
    expect(en.sheetText('44 × 18 in', 1)).toBe('44 × 18 in, 1 square.');
    expect(en.rectangle(2, '3 × 4 in')).toBe('2 of 3 × 4 in');
    expect(en.rectangle(1, '3 × 4 in')).toBe('3 × 4 in');
  });
});
