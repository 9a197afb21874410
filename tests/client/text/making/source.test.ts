import { expect, test } from 'vitest';
import { en } from '../../../../client/text/making/en.ts';

test('the words of the making count bobbins in English', () => {
  expect(en.shopping.threadText('90 yd', 1, '9 yd')).toContain('1 bobbin.');
  expect(en.shopping.threadText('180 yd', 2, '9 yd')).toContain('2 bobbins.');
});
