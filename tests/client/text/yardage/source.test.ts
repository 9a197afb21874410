import { expect, test } from 'vitest';
import { en } from '../../../../client/text/yardage/en.ts';

test('the words of the yardage name the piece that a field or a button belongs to', () => {
  for (const say of [en.across, en.along, en.count, en.remove]) expect(say('B')).toContain('B');
  expect(en.size('B', '5 × 12 in', '7')).toBe('B: 7 of 5 × 12 in');
});
