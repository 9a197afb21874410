import { countNeeded } from '../block/count-whole.ts';
import type { Block } from '../block/size-block.ts';
import type { Grid } from '../block/size-quilt.ts';

export interface SnipCount {
  readonly perSide: number;
  /** Each block snipped on its four sides before joining. */
  readonly beforeJoining: number;
  /** Snipped after joining: both allowances of an inner seam in one cut. */
  readonly afterJoining: number;
}

/**
 * Snips of a quilt: on a side of length c at pitch p there are ⌈c/p⌉ − 1, none at the corners.
 * Before joining each block has four sides; after joining an inner seam counts once for its two
 * allowances. Counting; where to snip is common practice, no source.
 *
 * @example
 * countSnips({ columns: 2, rows: 2 }, { cut: 100, snipPitch: 10 }) // => { perSide: 9, beforeJoining: 144, afterJoining: 108 }
 */
export function countSnips(grid: Grid, block: Pick<Block, 'cut' | 'snipPitch'>): SnipCount {
  const { columns, rows } = grid;
  const perSide = Math.max(0, countNeeded(block.cut, block.snipPitch) - 1);
  const innerSides = rows * (columns - 1) + columns * (rows - 1);
  const outerSides = 2 * (columns + rows);
  return {
    perSide,
    beforeJoining: 4 * columns * rows * perSide,
    afterJoining: (innerSides + outerSides) * perSide,
  };
}
