import { describe, expect, test } from 'vitest';
import { makeBoard } from '#core/layout/board.ts';
import { repeatPrints } from '#core/layout/repeat-prints.ts';
import { countTouch, lettersOf } from '../../support/boards.ts';

const lay = (
  columns: number,
  rows: number,
  how: { prints: number; shift: number; fixed?: string[] },
) => {
  const counts = Array.from({ length: how.prints }, () => 0);
  const board = makeBoard({
    ...{ grid: { columns, rows }, counts, touch: 'corners', seed: 1 },
    ...(how.fixed && { fixed: how.fixed }),
  });
  repeatPrints(
    board,
    counts.map((_, print) => print),
    how.shift,
  );
  return lettersOf(board);
};

describe('repeatPrints', () => {
  test('repeatPrints(4×2, four prints, shift 2) moves the second row by two', () => {
    expect(lay(4, 2, { prints: 4, shift: 2 })).toEqual(['ABCD', 'CDAB']);
  });

  test.each([2, 3])('repeatPrints of five prints or more, shift %i, touches nowhere', (shift) => {
    for (const prints of [5, 6, 7, 11]) {
      expect(countTouch(lay(13, 17, { prints, shift }), 'corners')).toBe(0);
    }
  });

  test('repeatPrints leaves pins where they are', () => {
    expect(lay(3, 2, { prints: 3, shift: 1, fixed: ['C..', '...'] })).toEqual(['CBC', 'BCA']);
  });
});
