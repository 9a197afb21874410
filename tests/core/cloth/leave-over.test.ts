import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leaveOver } from '#core/cloth/leave-over.ts';

const side = (least: number, most: number) => fc.integer({ min: least, max: most });

describe('leaveOver', () => {
  test('leaveOver(5 squares of 150 from 500 by 400) has one free and keeps what is wide enough', () => {
    const cloth = { width: 500, length: 400 };
    expect(leaveOver(cloth, { cut: 150, squares: 5, usable: 60 })).toEqual({
      spareFree: 1,
      left: [
        { width: 500, length: 100 },
        { width: 200, length: 150 },
      ],
    });
    const { left } = leaveOver(cloth, { cut: 150, squares: 5, usable: 101 });
    expect(left).toEqual([{ width: 200, length: 150 }]);
  });

  test('leaveOver keeps a rectangle that gives a square, however wide a strip must be', () => {
    const order = { cut: 50, squares: 3, usable: 400 };
    expect(leaveOver({ width: 200, length: 110 }, order).left).toEqual([
      { width: 200, length: 60 },
      { width: 50, length: 50 },
    ]);
  });

  test('leaveOver can cut just the free squares from what it leaves', () => {
    fc.assert(
      fc.property(
        side(300, 1500),
        side(300, 4000),
        side(50, 300),
        side(0, 60),
        (width, length, cut, wanted) => {
          const most = Math.floor(width / cut) * Math.floor(length / cut);
          const squares = Math.min(wanted, most);
          const { spareFree, left } = leaveOver({ width, length }, { cut, squares, usable: 63.5 });
          const given = left.reduce(
            (sum, one) => sum + Math.floor(one.width / cut) * Math.floor(one.length / cut),
            0,
          );
          expect(given).toBe(spareFree);
          expect(squares + spareFree).toBe(most);
        },
      ),
    );
  });
});
