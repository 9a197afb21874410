import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StashPiece } from '#core/stash/stash-spec.ts';
import { usePieces } from '#core/stash/use-pieces.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const make = (
  id: string,
  width: number,
  length: number,
  own: Partial<StashPiece> = {},
): StashPiece =>
  deepFreeze({
    id,
    role: 'top' as const,
    print: 'a',
    count: 1,
    width,
    length,
    selvage: 0,
    squaring: 0,
    ...own,
  });

describe('usePieces', () => {
  test('usePieces cuts up the small ones first and leaves the rest whole', () => {
    const pieces = [
      make('large', 600, 600),
      make('small', 210, 410),
      make('other', 600, 600, { print: 'b' }),
    ];
    const uses = usePieces({ pieces, usable: 60 }, 200, [{ role: 'top', print: 'a', squares: 3 }]);
    expect(uses.map(({ id, squares }) => [id, squares])).toEqual([
      ['large', 1],
      ['small', 2],
      ['other', 0],
    ]);
    expect(uses[1]?.left).toEqual([]);
    expect(uses[2]?.left).toEqual([{ width: 600, length: 600, count: 1 }]);
  });

  test('usePieces tells pieces alike apart by what is left of them', () => {
    const pieces = [make('four', 400, 450, { count: 4 })];
    const [use] = usePieces({ pieces, usable: 40 }, 200, [{ role: 'top', squares: 9 }]);
    // Two cut up, 400 by 50 left of each; one with a single square gone; one whole.
    expect(use?.left).toEqual([
      { width: 400, length: 450, count: 1 },
      { width: 400, length: 250, count: 1 },
      { width: 200, length: 200, count: 1 },
      { width: 400, length: 50, count: 2 },
    ]);
  });

  test('usePieces conserves: squares asked are squares cut, and no cloth is lost or made', () => {
    const side = fc.integer({ min: 100, max: 700 });
    const piece = fc.tuple(side, side, fc.integer({ min: 1, max: 4 }));
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 5 }), fc.nat(), (rows, part) => {
        const pieces = rows.map(([width, length, count], at) =>
          make(`${at}`, width, length, { count }),
        );
        const all = pieces.reduce(
          (sum, own) =>
            sum + own.count * Math.floor(own.width / 150) * Math.floor(own.length / 150),
          0,
        );
        const squares = part % (all + 1);
        const uses = usePieces({ pieces, usable: 0 }, 150, [{ role: 'top', squares }]);
        expect(uses.reduce((sum, use) => sum + use.squares, 0)).toBe(squares);
        for (const [at, use] of uses.entries()) {
          const [width = 0, length = 0, count = 0] = rows[at] ?? [];
          const left = use.left.reduce((sum, own) => sum + own.count * own.width * own.length, 0);
          expect(left + use.squares * 150 * 150).toBeCloseTo(count * width * length, 5);
        }
      }),
    );
  });
});
