import type { Touch } from '../contract.ts';

/** What spatial statistics ask of a grid: how its cells join, and who joins whom. */
export interface Joins {
  /** Pairs of cells that touch, each by its two places, row by row. */
  readonly pairs: readonly (readonly [number, number])[];
  /** For each place, how many it touches. */
  readonly degrees: readonly number[];
}

/**
 * The joins of a grid: cells that share a side (rook), or a side or a corner (king).
 * A grid of n by m has 2nm − n − m of the first and 2(n − 1)(m − 1) more of the second.
 *
 * @example
 * listJoins({ columns: 3, rows: 3 }, 'corners').pairs.length // => 20
 */
export function listJoins(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  touch: Touch,
): Joins {
  const pairs: (readonly [number, number])[] = [];
  const degrees = Array.from({ length: columns * rows }, () => 0);
  const steps =
    touch === 'corners'
      ? [
          [0, 1],
          [1, 0],
          [1, 1],
          [1, -1],
        ]
      : [
          [0, 1],
          [1, 0],
        ];
  for (let place = 0; place < columns * rows; place += 1) {
    const [row, column] = [Math.floor(place / columns), place % columns];
    for (const [down = 0, across = 0] of steps) {
      if (row + down >= rows || column + across < 0 || column + across >= columns) continue;
      const other = place + down * columns + across;
      pairs.push([place, other]);
      degrees[place] = (degrees[place] ?? 0) + 1;
      degrees[other] = (degrees[other] ?? 0) + 1;
    }
  }
  return { pairs, degrees };
}
