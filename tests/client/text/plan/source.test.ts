import { expect, test } from 'vitest';
import { en } from '../../../../client/text/plan/en.ts';

test('the words of the plan say in one English sentence what is planned', () => {
  expect(en.ready(5, 6, '50 × 60 in, 9 yd, 20 h')).toBe(
    'Planned: 5 by 6 blocks, 50 × 60 in, 9 yd, 20 h.',
  );
});
