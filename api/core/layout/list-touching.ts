/** Where two blocks of one print meet: places count row by row from the top left, 0 the first. */
export interface Meeting {
  readonly kind: 'side' | 'corner';
  readonly places: readonly [number, number];
}

/** Steps to the neighbours that come after a block: right, below, below to the right and to the left. */
const STEPS = [
  [0, 1, 'side'],
  [1, 0, 'side'],
  [1, 1, 'corner'],
  [1, -1, 'corner'],
] as const;

/**
 * Every meeting of two blocks of one print, each once: what `countTouching` counts, by place.
 *
 * @param cells a string a row, a letter a block; a full stop is a free cell and touches nothing
 *
 * @example
 * listTouching(['AA', 'BC']) // => [{ kind: 'side', places: [0, 1] }]
 */
export function listTouching(cells: readonly string[]): readonly Meeting[] {
  const columns = cells[0]?.length ?? 0;
  const found: Meeting[] = [];
  for (const [row, line] of cells.entries()) {
    for (let column = 0; column < columns; column += 1) {
      const print = line[column];
      if (print === undefined || print === '.') continue;
      for (const [down, across, kind] of STEPS) {
        if (cells[row + down]?.[column + across] !== print) continue;
        const place = row * columns + column;
        found.push({ kind, places: [place, place + down * columns + across] });
      }
    }
  }
  return found;
}
