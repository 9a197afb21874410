import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/kits/en.ts';

describe('the words of kits in English', () => {
  test.each([
    [['top'], 'One more kit wants print.'],
    [
      ['top', 'backing', 'distinctPrints'],
      'One more kit wants print, backing, and more different prints.',
    ],
    [[], ''],
  ] as const)('en.result.limited(%j) is %j', (limits, said) => {
    expect(en.result.limited(limits)).toBe(said);
  });

  test('en counts', () => {
    expect(en.result.group(1)).toBe('1 kit');
    expect(en.result.others(30, 'backing')).toBe('30 squares of backing in each.');
    expect(en.cutting.over(1)).toBe('and 1 square');
  });
});
