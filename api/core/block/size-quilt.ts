import { type Block, faceOf } from './size-block.ts';

/** A quilt's extent in millimetres. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

export interface Grid {
  readonly columns: number;
  readonly rows: number;
}

/**
 * The quilt as sewn, edge to edge with its outer fringe, before washing:
 * W = n·f + 2s, H = m·f + 2s. Plain geometry: inner allowances stand up on the front and take no
 * room, the outer ones lie flat.
 *
 * @param grid whole columns n and rows m
 * @param block mm
 * @returns mm
 *
 * @example
 * sewnSize({ columns: 2, rows: 3 }, { cut: 120, seam: 10 }) // => { width: 220, height: 320 }
 */
export function sewnSize(grid: Grid, block: Pick<Block, 'cut' | 'seam'>): Extent {
  const { width, height } = stitchLineSize(grid, block);
  return { width: width + 2 * block.seam, height: height + 2 * block.seam };
}

/**
 * The rectangle of the perimeter stitching: n·f by m·f.
 *
 * @example
 * stitchLineSize({ columns: 2, rows: 3 }, { cut: 120, seam: 10 }) // => { width: 200, height: 300 }
 */
export function stitchLineSize(grid: Grid, block: Pick<Block, 'cut' | 'seam'>): Extent {
  const face = faceOf(block);
  return { width: grid.columns * face, height: grid.rows * face };
}
