import type { Rectangle } from '../cloth/leave-rows.ts';
import type { Role } from '../contract.ts';
import { countSquares } from './count-squares.ts';
import { leaveRectangles } from './leave-rectangles.ts';
import type { StashPiece, StashSpec } from './stash-spec.ts';

/** What a plan takes of each print and role. */
export interface Wanted {
  readonly role: Role;
  /** Absent where any piece of the role will do. */
  readonly print?: string;
  readonly squares: number;
}

/** What is cut from pieces alike and what they leave. */
export interface PieceUse {
  readonly id: string;
  readonly role: Role;
  readonly squares: number;
  readonly left: readonly (Rectangle & { readonly count: number })[];
}

/**
 * Shares out what a plan takes among the pieces: those that give fewest squares are cut up first, so
 * that large pieces stay whole; ties to the earlier. A piece that is not cut is left as it is.
 *
 * @param wanted squares by role, and for the top by print; no more than the pieces give
 * @returns one entry for each of the pieces, in their order
 */
export function usePieces(
  spec: Pick<StashSpec, 'pieces' | 'usable'>,
  cut: number,
  wanted: readonly Wanted[],
): readonly PieceUse[] {
  const taken = new Map<StashPiece, number>();
  for (const { role, print, squares } of wanted) {
    let lack = squares;
    const own = spec.pieces.filter(
      (piece) => piece.role === role && (print === undefined || piece.print === print),
    );
    for (const piece of own.toSorted((one, other) => eachOf(one, cut) - eachOf(other, cut))) {
      const squaresHere = Math.min(lack, piece.count * eachOf(piece, cut));
      taken.set(piece, squaresHere);
      lack -= squaresHere;
    }
  }
  return spec.pieces.map((piece) => {
    const squares = taken.get(piece) ?? 0;
    const order = { cut, squares, usable: spec.usable };
    return { id: piece.id, role: piece.role, squares, left: leaveAll(piece, order) };
  });
}

function eachOf(piece: StashPiece, cut: number): number {
  const { across, along } = countSquares(piece, cut);
  return across * along;
}

function leaveAll(
  piece: StashPiece,
  order: { readonly cut: number; readonly squares: number; readonly usable: number },
): PieceUse['left'] {
  const each = eachOf(piece, order.cut);
  const full = each === 0 ? 0 : Math.floor(order.squares / each);
  const rest = order.squares - full * each;
  const whole = piece.count - full - (rest > 0 ? 1 : 0);
  const leave = (squares: number, count: number) =>
    count === 0 || squares === 0
      ? []
      : leaveRectangles(piece, { ...order, squares }).map((left) => ({ ...left, count }));
  return [
    ...(whole > 0 ? [{ width: piece.width, length: piece.length, count: whole }] : []),
    ...leave(rest, 1),
    ...leave(each, full),
  ];
}
