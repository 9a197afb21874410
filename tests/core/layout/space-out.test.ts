import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spaceOut } from '#core/layout/space-out.ts';

describe('spaceOut', () => {
  test('spaceOut puts the commonest at every second place', () => {
    expect(spaceOut([1, 3, 1])).toEqual([1, 0, 1, 2, 1]);
    expect(spaceOut([0, 0])).toEqual([]);
  });

  test('spaceOut keeps the counts, and like from like wherever no print has more than half', () => {
    const counts = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(counts, (own) => {
        const row = spaceOut(own);
        expect(own).toEqual(own.map((_, print) => row.filter((one) => one === print).length));
        const touching = row.filter((print, place) => print === row[place + 1]).length;
        const isPossible = Math.max(...own) <= Math.ceil(row.length / 2);
        expect(touching === 0).toBe(isPossible);
      }),
      { numRuns: 2000 },
    );
  });
});
