import type { Block } from '../block/size-block.ts';
import { type Grid, sewnSize, stitchLineSize } from '../block/size-quilt.ts';

/** Length of seam by stage, mm. */
export interface SeamLengths {
  /** Both diagonals of every block. */
  readonly quilting: number;
  /** Blocks into rows. */
  readonly joins: number;
  /** Row to row. */
  readonly rows: number;
  /** Round the perimeter, all passes. */
  readonly border: number;
}

/**
 * How much seam each stage sews: quilting 2·√2·c for each block, joins m·(n − 1)·c,
 * rows (m − 1)·W, border passes·2·(n·f + m·f). Plain geometry.
 *
 * @returns mm
 */
export function measureSeams(grid: Grid, block: Block, borderPasses: number): SeamLengths {
  const { columns, rows } = grid;
  const line = stitchLineSize(grid, block);
  return {
    quilting: columns * rows * 2 * Math.SQRT2 * block.cut,
    joins: rows * (columns - 1) * block.cut,
    rows: (rows - 1) * sewnSize(grid, block).width,
    border: borderPasses * 2 * (line.width + line.height),
  };
}
