import { describe, expect, test } from 'vitest';
import { readMaking } from '#core/wish/read-making.ts';

describe('readMaking', () => {
  test.each([
    ['6 prints', { prints: 6 }],
    ['six different fabrics', { prints: 6 }],
    ['5 telas', { prints: 5 }],
    ['aus 5 Stoffen', { prints: 5 }],
    ['4 tissus', { prints: 4 }],
    ['1 print', { prints: 1 }],
    ['26 prints', { prints: 26 }],
    ['27 prints', {}],
    ['0 prints', {}],
    ['2 or 3 prints', {}],
    ['40 x 50 prints', {}],
    ['4 prints on top, 5 prints below', {}],
    ['3 layers', { middle: true }],
    ['three-layered', { middle: true }],
    ['2 capas', { middle: false }],
    ['3 Lagen', { middle: true }],
    ['3 couches', { middle: true }],
    ['4 layers', {}],
    ['with batting', { middle: true }],
    ['without batting', { middle: false }],
    ['no middle layer', { middle: false }],
    ['washed', {}],
    ['washed once', { washes: 1 }],
    ['washed twice', { washes: 2 }],
    ['washed three times', { washes: 3 }],
    ['after 5 washes', { washes: 5 }],
    ['washed 99 times', {}],
    ['unwashed', {}],
  ])('readMaking of “%s” is %j', (words, said) => {
    const { rest: _rest, ...read } = readMaking(words);
    expect(read).toEqual(said);
  });

  test('readMaking leaves in the words what it does not take', () => {
    expect(readMaking('27 prints, 4 layers').rest).toBe('27 prints, 4 layers');
    expect(readMaking('2 layers with batting').rest).toContain('batting');
    expect(readMaking('not washed').rest).toBe('not washed');
  });
});
