import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countSquares } from '#core/stash/count-squares.ts';
import { type CutOrder, cutPieces } from '../../../../client/elements/stash/cut-piece.ts';

const ORDER: CutOrder = {
  ...{ unit: 'in', letter: 'A', width: 21.5, length: 18, selvage: 0, squaring: 0 },
  ...{ count: 3, cut: 9, squares: 11, usable: 2.5 },
};
const squaresOf = ({ groups }: ReturnType<typeof cutPieces>[number]['roll']) =>
  groups.reduce((sum, { count, pieces }) => sum + count * (pieces[0]?.count ?? 0), 0);

describe('cutPieces', () => {
  test('cutPieces cuts whole pieces first, and the last as far as it is needed', () => {
    expect(cutPieces(ORDER).map(({ count, squares }) => [count, squares])).toEqual([
      [2, 4],
      [1, 3],
    ]);
  });

  test('cutPieces draws the squares that are asked, inside each piece', () => {
    const side = fc.integer({ min: 5, max: 60 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 2, max: 12 }),
        fc.double({ noNaN: true, min: 0, max: 1 }),
        (width, length, cut, share) => {
          const { across, along } = countSquares({ width, length, selvage: 0, squaring: 0 }, cut);
          const squares = Math.ceil(share * 3 * across * along);
          const sheets = cutPieces({ ...ORDER, width, length, cut, squares });
          const drawn = sheets.reduce((sum, sheet) => sum + sheet.count * squaresOf(sheet.roll), 0);
          expect(drawn).toBe(across * along === 0 ? 0 : squares);
          for (const { roll, isAlong } of sheets) {
            const tall = roll.groups.reduce(
              (sum, { count, length: one }) => sum + count * one,
              roll.rest,
            );
            const sides = [roll.width, tall + roll.squaring].map((side) => side / 25.4);
            const [first = 0, second = 0] = isAlong ? sides.toReversed() : sides;
            expect([first, second]).toEqual([expect.closeTo(width, 6), expect.closeTo(length, 6)]);
          }
        },
      ),
    );
  });

  test('cutPieces of a piece that is too small is nothing', () => {
    expect(cutPieces({ ...ORDER, width: 5 })).toEqual([]);
  });
});
