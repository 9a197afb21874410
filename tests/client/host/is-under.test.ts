import { expect, test } from 'vitest';
import { isUnder } from '../../../client/host/is-under.ts';

test('isUnder takes a place and what lies under it, and no longer name that begins alike', () => {
  expect(isUnder('block', ['unit', 'block'])).toBe(true);
  expect(isUnder('block.cut', ['block'])).toBe(true);
  expect(isUnder('blocks', ['block'])).toBe(false);
  expect(isUnder('block', ['block.cut'])).toBe(false);
  expect(isUnder('block', [])).toBe(false);
});
