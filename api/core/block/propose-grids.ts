import { LENGTH_LIMITS, NUMBER_LIMITS, SIZE_LIMITS } from '../limits.ts';
import { faceOf } from './size-block.ts';
import type { Extent, Grid } from './size-quilt.ts';

/**
 * The grids of one block size that come nearest to a wish: the two nearest whole counts each way.
 * From W = n·f + 2s with W the size to sew, n lies between ⌊(W − 2s)/f⌋ and ⌈(W − 2s)/f⌉.
 *
 * @param sewn size to sew, mm
 * @param block mm, face above 0
 * @returns one to four grids inside the limits of columns, rows and blocks; none when the wish
 * needs more blocks than a quilt may have
 *
 * @example
 * proposeGrids({ width: 250, height: 320 }, { cut: 120, seam: 10 }) // => [{ columns: 2, rows: 3 }, { columns: 3, rows: 3 }]
 */
export function proposeGrids(
  sewn: Extent,
  block: { readonly cut: number; readonly seam: number },
): readonly Grid[] {
  const columns = nearestCounts(sewn.width, block, NUMBER_LIMITS.columns);
  const rows = nearestCounts(sewn.height, block, NUMBER_LIMITS.rows);
  return columns
    .flatMap((across) => rows.map((down) => ({ columns: across, rows: down })))
    .filter((grid) => isQuilt(grid, block));
}

/**
 * Whether a grid stays within the greatest quilt: blocks, and length of a side.
 *
 * @example
 * isQuilt({ columns: 6, rows: 8 }, { cut: 215.9, seam: 25.4 }) // => true
 * isQuilt({ columns: 60, rows: 60 }, { cut: 215.9, seam: 25.4 }) // => false
 */
export function isQuilt(
  grid: Grid,
  block: { readonly cut: number; readonly seam: number },
): boolean {
  const longest = Math.max(grid.columns, grid.rows) * faceOf(block) + 2 * block.seam;
  return grid.columns * grid.rows <= SIZE_LIMITS.blocks && longest <= LENGTH_LIMITS.quiltSide.most;
}

function nearestCounts(
  side: number,
  block: { readonly cut: number; readonly seam: number },
  limit: { readonly least: number; readonly most: number },
): readonly number[] {
  const exact = (side - 2 * block.seam) / faceOf(block);
  const below = Math.floor(exact + 1e-7);
  const above = Math.ceil(exact - 1e-7);
  const counts = [below, above].map((count) => Math.max(limit.least, count));
  return [...new Set(counts)].filter((count) => count <= limit.most);
}
