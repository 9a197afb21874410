import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leaveRows } from '#core/cloth/leave-rows.ts';

const cases = fc
  .record({
    cut: fc.integer({ min: 50, max: 300 }),
    width: fc.integer({ min: 300, max: 1500 }),
    length: fc.integer({ min: 300, max: 4000 }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ share, ...one }) => {
    const most = Math.floor(one.width / one.cut) * Math.floor(one.length / one.cut);
    return { ...one, squares: Math.round(share * most) };
  });

describe('leaveRows', () => {
  test('leaveRows(7 squares of 10 from 35 by 50) leaves the end, the edge and a place in the last row', () => {
    expect(leaveRows({ width: 35, length: 50 }, { cut: 10, squares: 7 })).toEqual([
      { width: 35, length: 20 },
      { width: 5, length: 20 },
      { width: 25, length: 10 },
    ]);
    expect(leaveRows({ width: 35, length: 50 }, { cut: 10, squares: 6 })).toEqual([
      { width: 35, length: 30 },
      { width: 5, length: 20 },
    ]);
  });

  test('leaveRows loses no cloth: what is left and the squares make the whole', () => {
    fc.assert(
      fc.property(cases, ({ width, length, cut, squares }) => {
        const left = leaveRows({ width, length }, { cut, squares });
        const area = left.reduce((sum, one) => sum + one.width * one.length, squares * cut ** 2);
        expect(area).toBe(width * length);
        for (const one of left) expect(Math.min(one.width, one.length)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('leaveRows of a cloth too narrow for a square leaves it whole', () => {
    expect(leaveRows({ width: 9, length: 50 }, { cut: 10, squares: 0 })).toEqual([
      { width: 9, length: 50 },
    ]);
  });
});
