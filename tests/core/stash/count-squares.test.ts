import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countSquares } from '#core/stash/count-squares.ts';

const piece = { width: 533.4, length: 457.2, selvage: 0, squaring: 0 };

describe('countSquares', () => {
  test('countSquares(fat quarter of 18 by 21 in, 9 in) is 2 by 2, and 6 in 3 by 3', () => {
    expect(countSquares(piece, 228.6)).toMatchObject({ across: 2, along: 2 });
    expect(countSquares(piece, 152.4)).toMatchObject({ across: 3, along: 3 });
  });

  test('countSquares leaves out selvages and what straightens the piece', () => {
    expect(countSquares({ ...piece, selvage: 40 }, 228.6)).toMatchObject({
      usableWidth: 453.4,
      across: 1,
    });
    expect(countSquares({ ...piece, squaring: 10 }, 228.6)).toMatchObject({
      usableLength: 447.2,
      along: 1,
    });
    expect(countSquares({ ...piece, selvage: 400 }, 100)).toMatchObject({
      usableWidth: 0,
      across: 0,
    });
  });

  test('countSquares: no packing of equal squares does better, for each holds a point of a lattice', () => {
    // The points (i·c + a, j·c + b) with a, b chosen just beyond what is left over: only
    // floor·floor of them lie inside, and every half-open square c by c anywhere holds exactly one.
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 5, max: 90 }),
        (width, length, cut) => {
          const inside = (side: number) => {
            const first = (side % cut) + 0.0005;
            return Math.max(0, Math.ceil((side - first) / cut - 1e-9));
          };
          const { across, along } = countSquares({ width, length, selvage: 0, squaring: 0 }, cut);
          expect(across * along).toBe(inside(width) * inside(length));
        },
      ),
    );
  });
});
