/**
 * Pairs of neighbouring blocks that show the same print: sharing a side, or meeting at a corner only.
 * On a grid of n by m there are 2nm − n − m pairs of the first kind and 2(n − 1)(m − 1) of the second.
 *
 * @param cells a string a row, a letter a block; a full stop is a free cell and touches nothing
 *
 * @example
 * countTouching(['AB', 'BA']) // => { sides: 0, corners: 2 }
 */
export function countTouching(cells: readonly string[]): {
  readonly sides: number;
  readonly corners: number;
} {
  const isAlike = (row: number, column: number, other: string | undefined) =>
    other !== undefined && other !== '.' && cells[row]?.[column] === other;
  let sides = 0;
  let corners = 0;
  for (const [row, line] of cells.entries()) {
    for (const [column, print] of [...line].entries()) {
      sides += Number(isAlike(row, column + 1, print)) + Number(isAlike(row + 1, column, print));
      corners +=
        Number(isAlike(row + 1, column - 1, print)) + Number(isAlike(row + 1, column + 1, print));
    }
  }
  return { sides, corners };
}
