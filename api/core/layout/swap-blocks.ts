/**
 * A grid in which two blocks have changed places.
 *
 * @param cells a string a row, a letter a block
 * @param one place, row by row from the top left, 0 the first
 * @param other the same
 *
 * @example
 * swapBlocks(['AB', 'CD'], 0, 3) // => ['DB', 'CA']
 */
export function swapBlocks(
  cells: readonly string[],
  one: number,
  other: number,
): readonly string[] {
  const columns = cells[0]?.length ?? 1;
  const read = (place: number) => cells[Math.floor(place / columns)]?.[place % columns] ?? '';
  const put = (rows: readonly string[], place: number, letter: string) =>
    rows.map((row, at) =>
      at === Math.floor(place / columns)
        ? row.slice(0, place % columns) + letter + row.slice((place % columns) + 1)
        : row,
    );
  return put(put(cells, one, read(other)), other, read(one));
}
