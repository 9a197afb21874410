import { expect, test } from 'vitest';
import { sayCount } from '#core/sewing/say-count.ts';

test('sayCount says one as one and all else in the plural', () => {
  expect([0, 1, 2].map((count) => sayCount(count, 'seam'))).toEqual([
    '0 seams',
    '1 seam',
    '2 seams',
  ]);
});
