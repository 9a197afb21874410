import { describe, expect, test } from 'vitest';
import { sayLength, saySides } from '../../../api/pages/say-length.ts';

describe('sayLength', () => {
  test.each([
    [8.5, 'in', '8 1/2 in'],
    [21.5, 'cm', '21.5 cm'],
    [50.1166, 'in', '50 1/8 in'],
  ] as const)('sayLength(%d, %s) is %s', (length, unit, expected) => {
    expect(sayLength(length, unit)).toBe(expected);
  });
  test('saySides says the width first', () => {
    expect(saySides({ width: 100, height: 130.05 }, 'cm')).toBe('100 cm by 130.1 cm');
  });
});
