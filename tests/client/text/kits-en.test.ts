import { describe, expect, test } from 'vitest';
import { kitsEn } from '../../../client/text/kits-en.ts';

describe('kitsEn', () => {
  test.each([
    [['top'], 'One more kit wants print.'],
    [
      ['top', 'backing', 'distinctPrints'],
      'One more kit wants print, backing, and more different prints.',
    ],
    [[], ''],
  ] as const)('kitsEn.result.limited(%j) is %j', (limits, said) => {
    expect(kitsEn.result.limited(limits)).toBe(said);
  });

  test('kitsEn counts', () => {
    expect(kitsEn.result.group(1)).toBe('1 kit');
    expect(kitsEn.result.others(30, 'backing')).toBe('30 squares of backing in each.');
    expect(kitsEn.cutting.over(1)).toBe('and 1 square');
  });
});
