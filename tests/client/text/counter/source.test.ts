import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/counter/en.ts';

describe('the words of the counter in English', () => {
  test('en counts squares, strips and cloths', () => {
    expect([1, 2].map(en.squares)).toEqual(['1 square', '2 squares']);
    expect(en.strips(1, 3, '12 in')).toBe('1 strip of 3 squares, 12 in each');
    expect([1, 4].map(en.withoutPrice)).toEqual([
      '1 cloth has no price yet.',
      '4 cloths have no price yet.',
    ]);
  });

  test('en prices by what the cloth is sold in', () => {
    expect(['yd', 'm'].map(en.price)).toEqual(['Price a yard', 'Price a metre']);
  });

  test('en says whether it is enough, with both figures', () => {
    expect(en.shortBy(15, 21)).toBe('It gives 15 of the 21 squares that you need.');
    expect(en.enoughBy(3)).toBe('It gives 3 squares more than you need.');
  });
});
