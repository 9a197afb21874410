import { expect, test } from 'vitest';
import { SIZE_NAMES } from '../../../../client/data/names.ts';
import { en } from '../../../../client/text/size/en.ts';

test('the words of the size name every size as people write it', () => {
  for (const name of SIZE_NAMES) expect(en.size(name)).toMatch(/^[A-Z][a-z]+( [a-z]+)?$/);
});

test('the words of the size say the blocks across before those down', () => {
  expect(en.drawing(4, 5)).toContain('4 across, 5 down');
  expect(en.ready(4, 5, '40 × 50 in')).toContain('4 by 5 blocks');
});
