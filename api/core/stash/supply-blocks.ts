import type { Role } from '../contract.ts';
import { countSquares } from './count-squares.ts';
import type { StashSpec } from './stash-spec.ts';

/** What the pieces give at one cut size. */
export interface Supply {
  readonly cut: number;
  /** Squares of each print of the top, in the order in which the prints first come. */
  readonly prints: readonly { readonly id: string; readonly squares: number }[];
  /** Blocks that the pieces of each role are enough for; roles without a piece are left out. */
  readonly roles: readonly { readonly role: Role; readonly blocks: number }[];
  /** Blocks that all of them are enough for. */
  readonly blocks: number;
}

/**
 * The most squares of one size from each print and role: sums of what the pieces give
 * (`countSquares`). With two middle layers a block takes two squares of the middle.
 *
 * @param cut mm
 */
export function supplyBlocks(spec: StashSpec, cut: number): Supply {
  const squares = spec.pieces.map((piece) => {
    const { across, along } = countSquares(piece, cut);
    return { role: piece.role, print: piece.print, squares: piece.count * across * along };
  });
  const total = (rows: readonly { readonly squares: number }[]) =>
    rows.reduce((sum, row) => sum + row.squares, 0);
  const top = squares.filter(({ role }) => role === 'top');
  const prints = [...new Set(top.map(({ print }) => print))].map((id) => ({
    id,
    squares: total(top.filter(({ print }) => print === id)),
  }));
  const roles = spec.layers.flatMap(({ role, count }) => {
    const own = squares.filter((row) => row.role === role);
    return own.length === 0 ? [] : [{ role, blocks: Math.floor(total(own) / count) }];
  });
  return { cut, prints, roles, blocks: Math.min(...roles.map(({ blocks }) => blocks)) };
}
