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
  let below: readonly number[] = kinds.map(() => Number.POSITIVE_INFINITY);
  for (const height of sorted) {
    const widths = kinds.map((kind) => widthAt(kind, height, usable));
    if (widths.every((width, kind) => width >= (below[kind] ?? 0))) continue;
    const turned = kinds.map(({ across }, kind) => widths[kind] !== across && isFit(widths[kind]));
    levels.push({ height, widths, turned });
    below = widths;
  }
  return levels;
}

/** The less of the widths that a kind can take in a strip of some height; infinite where it cannot lie in it. */
function widthAt({ across, along, canTurn }: PieceKind, height: number, usable: number): number {
  const tallest = height + ROOM_SLACK;
  const widest = usable + ROOM_SLACK;
  const plain = along <= tallest && across <= widest ? across : Number.POSITIVE_INFINITY;
  return canTurn && across <= tallest && along <= widest ? Math.min(plain, along) : plain;
}

function isFit(width: number | undefined): boolean {
  return width !== undefined && width < Number.POSITIVE_INFINITY;
}
