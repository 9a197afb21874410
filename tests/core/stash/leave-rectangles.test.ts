import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countSquares } from '#core/stash/count-squares.ts';
import { leaveRectangles } from '#core/stash/leave-rectangles.ts';

const piece = { width: 500, length: 400, selvage: 0, squaring: 0 };

describe('leaveRectangles', () => {
  test('leaveRectangles(500 by 400, three of 150) leaves one end whole', () => {
    // The other way round, two down and one more, would leave 200 by 400 at most.
    expect(leaveRectangles(piece, { cut: 150, squares: 3, usable: 60 })).toEqual([
      { width: 500, length: 250 },
    ]);
  });

  test('leaveRectangles lays rows along where that leaves the larger rectangle', () => {
    // Two squares in one row down leave 350 by 400; across they leave 500 by 250.
    expect(leaveRectangles(piece, { cut: 150, squares: 2, usable: 60 })).toEqual([
      { width: 350, length: 400 },
      { width: 150, length: 100 },
    ]);
  });

  test('leaveRectangles passes over what is narrower than is worth keeping', () => {
    expect(leaveRectangles(piece, { cut: 150, squares: 6, usable: 51 })).toEqual([
      { width: 500, length: 100 },
    ]);
    expect(leaveRectangles(piece, { cut: 150, squares: 6, usable: 50 })).toEqual([
      { width: 500, length: 100 },
      { width: 50, length: 300 },
    ]);
  });

  test('leaveRectangles loses no cloth: squares and rectangles together are the piece', () => {
    const side = fc.integer({ min: 60, max: 900 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 50, max: 200 }),
        fc.nat(),
        (width, length, cut, which) => {
          const own = { width, length, selvage: 0, squaring: 0 };
          const { across, along } = countSquares(own, cut);
          fc.pre(across * along > 0);
          const squares = 1 + (which % (across * along));
          const left = leaveRectangles(own, { cut, squares, usable: 0 });
          const area = left.reduce((sum, rectangle) => sum + rectangle.width * rectangle.length, 0);
          expect(area + squares * cut * cut).toBeCloseTo(width * length, 6);
          const areas = left.map((rectangle) => rectangle.width * rectangle.length);
          expect(areas).toEqual(areas.toSorted((one, other) => other - one));
          for (const rectangle of left) {
            expect(rectangle.width).toBeLessThanOrEqual(width);
            expect(rectangle.length).toBeLessThanOrEqual(length);
          }
        },
      ),
    );
  });
});
