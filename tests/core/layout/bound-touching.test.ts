import { describe, expect, test } from 'vitest';
import { boundTouching } from '#core/layout/bound-touching.ts';
import { fewestByFrontier } from '../../support/fewest-by-frontier.ts';

const bound = (
  columns: number,
  rows: number,
  counts: readonly number[],
  touch: 'corners' | 'sides',
) => boundTouching({ grid: { columns, rows }, counts, touch, seed: 1 });

describe('boundTouching', () => {
  test.each(['corners', 'sides'] as const)(
    'boundTouching (%s) is never above the fewest of a table over all layouts, up to 3×5 and five prints',
    (touch) => {
      for (const [columns, rows] of [
        [1, 5],
        [2, 4],
        [3, 3],
        [3, 4],
        [3, 5],
      ] as const) {
        for (const [key, fewest] of fewestByFrontier({ columns, rows }, 5, touch)) {
          const counts = key.split(',').map(Number);
          for (const own of [
            bound(columns, rows, counts, touch),
            bound(rows, columns, counts, touch),
          ]) {
            expect([columns, rows, key, own <= fewest]).toEqual([columns, rows, key, true]);
          }
        }
      }
    },
  );

  test('boundTouching at corners is above nought just from ⌈n/2⌉·⌈m/2⌉ + 1 blocks of one print on', () => {
    // 6×8 holds 12 of one print apart, 7×9 holds 20 (own derivation, windows of two by two).
    expect(bound(6, 8, [12, 12, 12, 12], 'corners')).toBe(0);
    expect(bound(6, 8, [13, 12, 12, 11], 'corners')).toBe(1);
    expect(bound(7, 9, [20, 15, 14, 14], 'corners')).toBe(0);
    // Where both sides are odd, so it is for the parting moved by one, which shares no pair with it.
    expect(bound(7, 9, [21, 14, 14, 14], 'corners')).toBe(2);
  });

  test('boundTouching at sides is above nought just beyond half the cells, rounded up', () => {
    expect(bound(5, 5, [13, 12], 'sides')).toBe(0);
    expect(bound(5, 5, [14, 11], 'sides')).toBeGreaterThan(0);
    expect(bound(8, 8, [32, 32], 'sides')).toBe(0);
    // One block too many leaves two neighbours alike on a closed way through all cells.
    expect(bound(8, 8, [33, 31], 'sides')).toBe(2);
  });

  test('boundTouching of one print is every pair: 2nm − n − m at sides', () => {
    expect(bound(6, 7, [42], 'sides')).toBe(2 * 42 - 13);
  });

  test('boundTouching at corners of three prints counts at least one pair in each window apart', () => {
    // 100 windows as they lie, 81 whole ones when moved by one.
    expect(bound(20, 20, [134, 133, 133], 'corners')).toBe(181);
    expect(bound(20, 20, [200, 200], 'corners')).toBe(362);
  });
});
