import { describe, expect, test } from 'vitest';
import { listJoins } from '#core/layout/list-joins.ts';

describe('listJoins', () => {
  // King's graph of n by m: 4nm − 3(n + m) + 2 edges (en.wikipedia.org, King's graph).
  test.each([
    [2, 2, 6],
    [3, 3, 20],
    [4, 4, 42],
    [5, 5, 72],
    [6, 8, 152],
    [1, 7, 6],
  ])('listJoins(%i×%i, corners) has %i', (columns, rows, joins) => {
    expect(listJoins({ columns, rows }, 'corners').pairs).toHaveLength(joins);
  });

  test('listJoins(n×m, sides) has 2nm − n − m, and every degree counts the joins of its cell', () => {
    for (const [columns, rows] of [
      [1, 1],
      [4, 4],
      [5, 9],
    ] as const) {
      const { pairs, degrees } = listJoins({ columns, rows }, 'sides');
      expect(pairs).toHaveLength(2 * columns * rows - columns - rows);
      const own = degrees.map((_, place) => pairs.filter((pair) => pair.includes(place)).length);
      expect(degrees).toEqual(own);
    }
  });
});
