import { describe, expect, test } from 'vitest';
import { writePlain } from '#core/write-plain.ts';

describe('writePlain', () => {
  test.each([
    ['8½', '8 1/2'],
    ['  8\u00a0\u202f1/2 ', '8 1/2'],
    ['８．５', '8.5'],
    ['٢١٫٥', '21.5'],
    ['۴′', "4'"],
    ['8“', '8"'],
    ['8„', '8"'],
    ["8''", '8"'],
    ['8‑1⁄2', '8-1/2'],
    ['+3', '3'],
    ['8 FUẞ', '8 fuß'],
    ['', ''],
  ])('writePlain(%j) is %j', (typed, plain) => {
    expect(writePlain(typed)).toBe(plain);
  });

  test('writePlain leaves a minus, and a plus that stands before no number', () => {
    expect(writePlain('−3')).toBe('−3');
    expect(writePlain('+a')).toBe('+a');
  });
});
