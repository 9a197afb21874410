import { expect, test } from 'vitest';
import { readSearch } from '../../../client/host/read-search.ts';

test('readSearch takes what comes from the first question mark on', () => {
  expect(readSearch('/v1/plan?target.size=lap')).toBe('?target.size=lap');
  expect(readSearch('/v1/plan?a=1?b')).toBe('?a=1?b');
  expect(readSearch('/v1/kits')).toBe('');
});
