import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { listPairs, splitQuery } from '../../../api/pages/split-query.ts';

describe('splitQuery', () => {
  test.each([
    ['', { query: '', own: [] }],
    ['?', { query: '', own: [] }],
    ['?a=1&b=2', { query: 'a=1&b=2', own: [] }],
    [
      'a=8%201/2&_lang=fr&_locked=block+unit',
      {
        query: 'a=8%201/2',
        own: [
          ['lang', 'fr'],
          ['locked', 'block unit'],
        ],
      },
    ],
    ['?%5Flang=de&c=', { query: '', own: [['lang', 'de']] }],
    ['?a&b=%', { query: 'a&b=%', own: [] }],
  ])('splitQuery(%j)', (search, expected) => {
    expect(splitQuery(search)).toEqual(expected);
  });
  test.each(ENDPOINTS.map(({ path, understandQuery }) => ({ path, understandQuery })))(
    'no name of $path can start with the sign of a page’s own',
    ({ understandQuery }) => {
      const understood = understandQuery('_lang=de');
      const codes = understood.ok ? [] : understood.faults.map(({ code }) => code);
      expect(codes).toContain('malformed-query');
    },
  );
});

describe('listPairs', () => {
  test('decodes as forms encode (URL standard, application/x-www-form-urlencoded)', () => {
    expect(listPairs('a=1+2&a=%C2%BD')).toEqual([
      ['a', '1 2'],
      ['a', '½'],
    ]);
  });
});
