/** The blocks on both sides of the middle of a row; one and the same where it falls on a block. */
export interface Middle {
  readonly from: number;
  readonly to: number;
}

/**
 * Where the middle of a row of blocks falls. Counting.
 *
 * @param columns blocks in the row, 1 or more
 *
 * @example
 * findMiddle(6) // => { from: 3, to: 4 }
 * findMiddle(7) // => { from: 4, to: 4 }
 */
export function findMiddle(columns: number): Middle {
  return { from: Math.ceil(columns / 2), to: Math.floor(columns / 2) + 1 };
}
