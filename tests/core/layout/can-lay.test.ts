import { describe, expect, test } from 'vitest';
import { canLay, mostApart } from '#core/layout/can-lay.ts';

describe('mostApart', () => {
  // Brute force over all placements gave these for 3×3 to 4×5; the larger by the pairing argument.
  test.each([
    [3, 3, 4],
    [3, 4, 4],
    [4, 5, 6],
    [6, 8, 12],
    [7, 9, 20],
    [1, 5, 3],
  ])('mostApart(%i×%i, corners) is %i', (columns, rows, most) => {
    expect(mostApart({ columns, rows }, 'corners')).toBe(most);
  });

  test.each([
    [2, 2, 'corners'],
    [3, 3, 'corners'],
    [3, 4, 'corners'],
    [3, 4, 'sides'],
    [1, 4, 'corners'],
  ] as const)('mostApart(%i×%i, %s) is the most that any placement has', (columns, rows, touch) => {
    const cells = columns * rows;
    const reach = (one: number, other: number) => {
      const down = Math.abs(Math.floor(one / columns) - Math.floor(other / columns));
      const across = Math.abs((one % columns) - (other % columns));
      return touch === 'sides' ? down + across : Math.max(down, across);
    };
    let most = 0;
    for (let set = 0; set < 2 ** cells; set += 1) {
      const own = Array.from({ length: cells }, (_, cell) => cell).filter((c) => (set >> c) & 1);
      const meets = own.some((one) => own.some((other) => one < other && reach(one, other) === 1));
      if (!meets) most = Math.max(most, own.length);
    }
    expect(mostApart({ columns, rows }, touch)).toBe(most);
  });
});

describe('canLay', () => {
  test('canLay wants four prints where four blocks meet and corners count', () => {
    expect(canLay({ columns: 2, rows: 2 }, [9, 9, 9], 'corners')).toBe(false);
    expect(canLay({ columns: 2, rows: 2 }, [9, 9, 9, 0], 'corners')).toBe(false);
    expect(canLay({ columns: 2, rows: 2 }, [1, 1, 1, 1], 'corners')).toBe(true);
    expect(canLay({ columns: 1, rows: 5 }, [3, 2], 'corners')).toBe(true);
    expect(canLay({ columns: 2, rows: 2 }, [2, 2], 'sides')).toBe(true);
  });

  test('canLay wants enough of every one of four prints, since each meeting of corners has all', () => {
    // 9 by 11 cells hold 4·5 squares of two by two apart: 20 of each of four prints.
    expect(canLay({ columns: 9, rows: 11 }, [30, 30, 25, 19], 'corners')).toBe(false);
    expect(canLay({ columns: 9, rows: 11 }, [30, 30, 25, 20], 'corners')).toBe(true);
  });

  test('canLay counts no more of a print than can stand apart', () => {
    expect(canLay({ columns: 3, rows: 3 }, [5, 2, 1, 1], 'corners')).toBe(false);
    expect(canLay({ columns: 3, rows: 3 }, [5, 2, 2, 1], 'corners')).toBe(true);
    expect(canLay({ columns: 3, rows: 3 }, [6, 3], 'sides')).toBe(false);
  });
});
