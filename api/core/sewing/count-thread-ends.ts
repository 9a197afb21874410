import type { Grid } from '../block/size-quilt.ts';

/** How often thread is spent beside the seams themselves. */
export interface ThreadEnds {
  /** Short lengths between two chained blocks. */
  readonly links: number;
  /** Thread cut off where a run of stitching starts or ends. */
  readonly tails: number;
}

/**
 * Links and tails of a quilt sewn in chains, and of one sewn seam by seam.
 *
 * Chained: all blocks along one diagonal in a chain, then all along the other; the joins of a row
 * in a chain. A run of k seams in a chain has k − 1 links and two tails. The long seams between
 * rows and each pass of the border are runs of one. Singly every seam has two tails.
 * Counting, from the way the trade chains its pieces (common practice, no source).
 *
 * @example
 * countThreadEnds({ columns: 3, rows: 2 }, 2).chained // => { links: 12, tails: 14 }
 * countThreadEnds({ columns: 3, rows: 2 }, 2).singly // => { links: 0, tails: 38 }
 */
export function countThreadEnds(
  grid: Grid,
  borderPasses: number,
): { readonly chained: ThreadEnds; readonly singly: ThreadEnds } {
  const { columns, rows } = grid;
  const chains = [
    ...Array.from({ length: 2 }, () => columns * rows),
    ...Array.from({ length: rows }, () => columns - 1),
    ...Array.from({ length: rows - 1 + borderPasses }, () => 1),
  ].filter((seams) => seams > 0);
  const seams = chains.reduce((sum, length) => sum + length, 0);
  return {
    chained: { links: seams - chains.length, tails: 2 * chains.length },
    singly: { links: 0, tails: 2 * seams },
  };
}
