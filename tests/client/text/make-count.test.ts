import { describe, expect, test } from 'vitest';
import { makeCount } from '../../../client/text/make-count.ts';

/** Unicode CLDR, supplemental/plurals.xml, cardinal: English and German `one` for 1 alone, Spanish too, French for 0 and 1. */
const ONES = [
  ['en', [1]],
  ['de', [1]],
  ['es', [1]],
  ['fr', [0, 1]],
] as const;

describe('makeCount', () => {
  test.each(ONES)('makeCount(%j) uses the singular for %j alone', (language, ones) => {
    const count = makeCount(language);
    const single = [0, 1, 2, 5, 11, 21, 101].filter((n) =>
      count(n, 'one', 'other').endsWith('one'),
    );
    expect(single).toEqual(ones);
  });

  test.each([
    ['en', '12,345 x'],
    ['de', '12.345 x'],
    ['es', '12.345 x'],
    ['fr', '12\u202f345 x'],
  ])('makeCount(%j) writes thousands in the manner of the language', (language, said) => {
    expect(makeCount(language)(12_345, 'y', 'x')).toBe(said);
  });

  test('makeCount has a form for a million, which Spanish and French keep a third form for', () => {
    for (const language of ['es', 'fr']) {
      expect(makeCount(language)(1_000_000, 'y', 'x')).toMatch(/x$/);
    }
  });
});
