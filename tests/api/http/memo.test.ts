import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeMemo } from '../../../api/http/memo.ts';

const make = (bounds: { entries: number; bytes: number; largest: number }) =>
  makeMemo<string>((text, key) => text.length + key.length, bounds);

describe('makeMemo', () => {
  test('drops what was not asked for longest where there are too many', () => {
    const memo = make({ entries: 2, bytes: 99, largest: 9 });
    memo.keep('a', '1');
    memo.keep('b', '2');
    expect(memo.find('a')).toBe('1');
    memo.keep('c', '3');
    expect(['a', 'b', 'c'].map(memo.find)).toEqual(['1', undefined, '3']);
  });

  test('drops as many as it takes where there are too many bytes', () => {
    const memo = make({ entries: 9, bytes: 10, largest: 9 });
    for (const key of 'abc') memo.keep(key, '12');
    memo.keep('d', '12345678');
    expect([...'abcd'].map(memo.find)).toEqual([undefined, undefined, undefined, '12345678']);
  });

  test('keeps nothing that is too large, and forgets what stood in its place', () => {
    const memo = make({ entries: 9, bytes: 99, largest: 4 });
    memo.keep('a', '123');
    memo.keep('a', '1234');
    expect(memo.find('a')).toBe(undefined);
  });

  test('holds as a plain list of the latest does, whatever is kept and found', () => {
    const step = fc.tuple(fc.boolean(), fc.constantFrom(...'abcdef'), fc.nat({ max: 6 }));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        const bounds = { entries: 3, bytes: 12, largest: 6 };
        const memo = make(bounds);
        let model: [string, string][] = [];
        for (const [isKept, key, length] of steps) {
          const before = model.find(([known]) => known === key);
          const rest = model.filter(([known]) => known !== key);
          if (isKept) {
            const value = '.'.repeat(length);
            memo.keep(key, value);
            model = length + 1 > bounds.largest ? rest : [...rest, [key, value]];
            const size = () => model.reduce((sum, [, text]) => sum + text.length + 1, 0);
            while (model.length > bounds.entries || size() > bounds.bytes) model = model.slice(1);
          } else {
            expect(memo.find(key)).toBe(before?.[1]);
            if (before !== undefined) model = [...rest, before];
          }
        }
        for (const key of 'abcdef') {
          expect(memo.find(key)).toBe(model.find(([known]) => known === key)?.[1]);
        }
      }),
    );
  });
});
