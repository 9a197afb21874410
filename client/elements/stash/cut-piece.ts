import type { Unit } from '#core/contract.ts';
import type { DrawnRoll } from '#core/drawing/lay-bands.ts';
import { readKind } from '#core/drawing/read-strips.ts';
import { toMillimetres } from '#core/length.ts';
import { countSquares } from '#core/stash/count-squares.ts';
import { areRowsAlong } from '#core/stash/leave-rectangles.ts';

/** A piece of cloth and what is cut from all of its kind; lengths in `unit`. */
export interface CutOrder {
  readonly unit: Unit;
  /** Of the print; empty for cloth that is not of the top. */
  readonly letter: string;
  readonly width: number;
  readonly length: number;
  readonly selvage: number;
  readonly squaring: number;
  readonly count: number;
  /** Side of a square. */
  readonly cut: number;
  /** Squares from all the pieces alike. */
  readonly squares: number;
  /** Least shorter side of what is worth keeping. */
  readonly usable: number;
}

/** A piece is drawn whole unless it is longer than this many times its width. */
const TALLEST = 3;

/** Pieces cut alike. */
export interface CutSheet {
  readonly count: number;
  readonly squares: number;
  readonly roll: DrawnRoll;
  /** Drawn on its side: rows of squares lie along the piece. */
  readonly isAlong: boolean;
}

/**
 * How pieces alike are cut into squares: as many as it takes whole, and the last as far as it is needed. Rows lie as
 * they do for what is left.
 */
export function cutPieces(order: CutOrder): readonly CutSheet[] {
  const mm = (value: number) => toMillimetres(value, order.unit);
  const piece = {
    width: mm(order.width),
    length: mm(order.length),
    selvage: mm(order.selvage),
    squaring: mm(order.squaring),
  };
  const { across, along } = countSquares(piece, mm(order.cut));
  const each = across * along;
  if (each === 0) return [];
  const whole = Math.floor(order.squares / each);
  const rest = order.squares - whole * each;
  const sheet = (count: number, squares: number): CutSheet => {
    const isAlong = areRowsAlong(piece, {
      cut: mm(order.cut),
      squares,
      usable: mm(order.usable),
    });
    return { count, squares, isAlong, roll: drawRows(order, piece, { squares, isAlong }) };
  };
  return [...(whole > 0 ? [sheet(whole, each)] : []), ...(rest > 0 ? [sheet(1, rest)] : [])];
}

function drawRows(
  { unit, cut, letter }: CutOrder,
  piece: Parameters<typeof countSquares>[0],
  { squares, isAlong }: { readonly squares: number; readonly isAlong: boolean },
): DrawnRoll {
  const kind = { ...readKind({ width: cut, length: cut, unit, place: 0 }), letter };
  const side = kind.width;
  const { usableWidth, usableLength, across, along } = countSquares(piece, side);
  const [width, tall, beside] = isAlong
    ? [usableLength, usableWidth, along]
    : [usableWidth, usableLength, across];
  const rows = Math.floor(squares / beside);
  const last = squares - rows * beside;
  const strip = (count: number, inOne: number) => {
    return { count, length: side, reads: '', pieces: [{ kind, count: inOne, turned: false }] };
  };
  return {
    groups: [...(rows > 0 ? [strip(rows, beside)] : []), ...(last > 0 ? [strip(1, last)] : [])],
    width,
    tallest: TALLEST,
    squaring: isAlong ? 0 : piece.squaring,
    rest: Math.max(0, tall - (rows + (last > 0 ? 1 : 0)) * side),
  };
}
