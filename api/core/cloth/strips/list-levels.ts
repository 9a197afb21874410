/** One size of piece wanted from a roll; mm. */
export interface PieceKind {
  /** Side across the roll. */
  readonly across: number;
  /** Side along the roll. */
  readonly along: number;
  /** Whole, 1 or more. */
  readonly count: number;
  /** Whether a quarter turn is allowed. */
  readonly canTurn: boolean;
}

/** Strips of one height: how much of the roll's width each kind takes in them. */
export interface Level {
  readonly height: number;
  /** Width that each kind takes across the roll; infinite where it does not fit the height. */
  readonly widths: readonly number[];
  /** Which kinds lie turned to take that width. */
  readonly turned: readonly boolean[];
}

/** Room that two equal sums may differ by, mm: far below what a cutter sees. */
export const ROOM_SLACK = 1e-5;

/**
 * The heights that a strip may usefully have, lowest first.
 *
 * A strip is as tall as its tallest piece, so only sides of pieces come into question; a height at
 * which no kind takes less width than at a lower one is useless, since the lower does the same.
 * At each height a kind lies the way that takes the least width.
 *
 * @param usable width of the roll that can be cut, mm
 */
export function listLevels(kinds: readonly PieceKind[], usable: number): readonly Level[] {
  const heights = kinds.flatMap((kind) => [kind.along, ...(kind.canTurn ? [kind.across] : [])]);
  const sorted = [...new Set(heights)].toSorted((one, other) => one - other);
  const levels: Level[] = [];
  for (const height of sorted) {
    const level = levelAt(kinds, height, usable);
    const below = levels.at(-1);
    if (
      level.widths.some((width, kind) => width < (below?.widths[kind] ?? Number.POSITIVE_INFINITY))
    ) {
      levels.push(level);
    }
  }
  return levels;
}

function levelAt(kinds: readonly PieceKind[], height: number, usable: number): Level {
  const ways = kinds.map((kind) => {
    const fits = (across: number, along: number) =>
      along <= height + ROOM_SLACK && across <= usable + ROOM_SLACK;
    const plain = fits(kind.across, kind.along) ? kind.across : Number.POSITIVE_INFINITY;
    const turned =
      kind.canTurn && fits(kind.along, kind.across) ? kind.along : Number.POSITIVE_INFINITY;
    return { width: Math.min(plain, turned), isTurned: turned < plain };
  });
  return {
    height,
    widths: ways.map((way) => way.width),
    turned: ways.map((way) => way.isTurned),
  };
}
