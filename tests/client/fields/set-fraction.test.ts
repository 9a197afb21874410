import { expect, test } from 'vitest';
import { setFraction } from '../../../client/fields/set-fraction.ts';

test.each([
  ['8', '½', '8½'],
  ['8½', '¼', '8¼'],
  ['8 1/4', '½', '8½'],
  ['8.5', '⅜', '8⅜'],
  [' 12 ', '⅛', '12⅛'],
  ['3/8', '⅞', '⅞'],
  ['13/8', '⅞', '⅞'],
  ['½', '⅞', '⅞'],
  ['', '⅞', '⅞'],
  ['wide', '⅞', '⅞'],
])('setFraction(%j, %j) is %j', (typed, sign, result) => {
  expect(setFraction(typed, sign)).toBe(result);
});
