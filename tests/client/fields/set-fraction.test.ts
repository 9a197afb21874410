import { expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { setFraction } from '../../../client/fields/set-fraction.ts';
import { SOUND_ENTRIES } from '../../support/entry-table.ts';

test.each([
  ['8', '½', '8½'],
  ['8½', '¼', '8¼'],
  ['8 ½', '¼', '8¼'],
  ['8-½', '¼', '8¼'],
  ['8 1/4', '½', '8½'],
  ['8-1/4', '½', '8½'],
  ['8 1/', '½', '8½'],
  ['8.5', '⅜', '8⅜'],
  ['8,5', '⅜', '8⅜'],
  ['8.', '⅜', '8⅜'],
  [' 12 ', '⅛', '12⅛'],
  ['3/8', '⅞', '⅞'],
  ['13/8', '⅞', '⅞'],
  ['½', '⅞', '⅞'],
  ['', '⅞', '⅞'],
  ['wide', '⅞', '⅞'],
  ['8 in', '⅞', '8⅞ in'],
  ['8½"', '⅞', '8⅞"'],
  ['8 1/4 inches', '⅞', '8⅞ inches'],
  ['4\' 2"', '⅞', '4\' 2⅞"'],
  ['4 ft 2 1/2 in', '⅞', '4 ft 2⅞ in'],
])('setFraction(%j, %j) is %j', (typed, sign, result) => {
  expect(setFraction(typed, sign)).toBe(result);
});

test('setFraction makes of what can be read what can be read', () => {
  // Full-width signs come from keyboards that have fractions of their own.
  const odd = SOUND_ENTRIES.filter(([typed, unit]) => {
    if (/[！-～]/.test(typed)) return false;
    const read = readLength(setFraction(typed, '⅜'), unit);
    return !read.ok;
  });
  expect(odd.map(([typed]) => [typed, setFraction(typed, '⅜')])).toEqual([]);
});
