import type { DrawnStrip } from './draw-strip.ts';

/** A length of cloth, or a flat piece, cut into strips; in millimetres. */
export interface DrawnRoll {
  /** Strips alike together, in the order in which they are cut. */
  readonly groups: readonly (DrawnStrip & {
    readonly count: number;
    /** Its length as it is read, such as `8½ in`. */
    readonly reads: string;
  })[];
  /** As wide as it is used. */
  readonly width: number;
  /** Cut away first, to straighten the end. */
  readonly squaring: number;
  /** What lies beyond the last strip. */
  readonly rest: number;
  /** What a column is at most, as a multiple of the width; 1.5 unless told. */
  readonly tallest?: number;
}

/** A strip where it lies, or what is cut away before the first and left after the last. */
export interface Band {
  readonly column: number;
  readonly y: number;
  readonly height: number;
  /** Counted from 1; absent for what is cut away. */
  readonly number?: number;
  readonly group?: DrawnRoll['groups'][number];
  readonly isFirst: boolean;
}

const TALLEST = 1.5;
const MOST_COLUMNS = 4;

/**
 * Into how many columns a roll is folded, so that a long one is not too fine to read.
 *
 * @example
 * countColumns({ groups: [], width: 1000, squaring: 0, rest: 1600 }) // => 2
 */
export function countColumns(roll: DrawnRoll): number {
  const columns = Math.ceil(heightOf(roll) / (roll.width * (roll.tallest ?? TALLEST)) - 1e-9);
  return Math.max(1, Math.min(MOST_COLUMNS, columns));
}

function heightOf({ groups, squaring, rest }: DrawnRoll): number {
  return groups.reduce((sum, { count, length }) => sum + count * length, squaring + rest);
}

/** Lays the strips of a roll into its columns, each as it is cut. */
export function layBands(roll: DrawnRoll): readonly Band[] {
  const columns = countColumns(roll);
  const tallest = heightOf(roll) / columns;
  const bands: Band[] = [];
  let [column, y, number] = [0, 0, 0];
  const add = (height: number, band: Partial<Band>) => {
    if (height < 0.05) return;
    const isFull = y > 0 && y + height / 2 > tallest * (1 + 1e-9);
    if (isFull && column < columns - 1) [column, y] = [column + 1, 0];
    bands.push({ column, y, height, isFirst: false, ...band });
    y += height;
  };
  add(roll.squaring, {});
  for (const group of roll.groups) {
    for (let strip = 0; strip < group.count; strip += 1) {
      number += 1;
      add(group.length, { group, number, isFirst: strip === 0 });
    }
  }
  add(roll.rest, {});
  return bands;
}
