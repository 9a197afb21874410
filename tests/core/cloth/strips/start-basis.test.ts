import { describe, expect, test } from 'vitest';
import { startBasis } from '#core/cloth/strips/start-basis.ts';
import { BY_HAND, problemOf } from '../../../support/strip-cases.ts';

describe('startBasis', () => {
  test('startBasis(three sizes by hand) fills strips of each alone, where it is lowest a piece', () => {
    const { basis, amounts, inverse } = startBasis(problemOf(BY_HAND));
    // 3 of 30 in strips of 20; 2 of 40 in strips of 25, not turned in 40; 5 of 20 in strips of 10.
    expect(basis.map(({ pattern }) => pattern)).toEqual([
      { level: 1, counts: [3, 0, 0] },
      { level: 2, counts: [0, 2, 0] },
      { level: 0, counts: [0, 0, 5] },
    ]);
    expect(amounts).toEqual([1, 1, 1]);
    expect(inverse.map((row) => [...row])).toEqual([
      [1 / 3, 0, 0],
      [0, 1 / 2, 0],
      [0, 0, 1 / 5],
    ]);
  });
});
