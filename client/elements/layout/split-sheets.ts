/** One page of a floor sheet: a piece of the grid and where its corner lies. */
export interface FloorPage {
  /** Its place among the pages, from the top left, row by row: 0 the first. */
  readonly page: number;
  /** The row and the column of its first block, from 0. */
  readonly row: number;
  readonly column: number;
  readonly cells: readonly string[];
}

/** Blocks along a side of one page. */
const MOST = 20;

/**
 * Cuts a grid into pages of at most 20 by 20 blocks, as even as they come.
 *
 * @example
 * splitSheets(['AB', 'BA']) // => [{ page: 0, row: 0, column: 0, cells: ['AB', 'BA'] }]
 */
export function splitSheets(cells: readonly string[]): readonly FloorPage[] {
  const across = splitSide(cells[0]?.length ?? 0);
  return splitSide(cells.length).flatMap((down, line) =>
    across.map((part, at) => ({
      page: line * across.length + at,
      row: down.from,
      column: part.from,
      cells: cells.slice(down.from, down.to).map((row) => row.slice(part.from, part.to)),
    })),
  );
}

function splitSide(blocks: number): readonly { readonly from: number; readonly to: number }[] {
  const pages = Math.max(1, Math.ceil(blocks / MOST));
  const edge = (page: number) => Math.round((page * blocks) / pages);
  return Array.from({ length: pages }, (_, page) => ({ from: edge(page), to: edge(page + 1) }));
}
