import type { Grid } from '../block/size-quilt.ts';
import type { Touch } from '../contract.ts';

/**
 * The most cells that one print can take in a grid of n by m without touching itself: with corners
 * ⌈n/2⌉·⌈m/2⌉, since each square of two by two cells holds one of it at most; by sides ⌈nm/2⌉, since
 * the cells can be paired off with their neighbours.
 *
 * @example
 * mostApart({ columns: 7, rows: 9 }, 'corners') // => 20
 * mostApart({ columns: 5, rows: 3 }, 'sides') // => 8
 */
export function mostApart({ columns, rows }: Grid, touch: Touch): number {
  if (touch === 'sides') return Math.ceil((columns * rows) / 2);
  return Math.ceil(columns / 2) * Math.ceil(rows / 2);
}

/**
 * Whether nothing speaks against filling a grid from these prints with none touching itself: enough
 * cells that each can take; and where corners count, four different prints in each of the
 * K = ⌊n/2⌋·⌊m/2⌋ squares of two by two cells that lie side by side, so Σ min(sⱼ, K) ≥ 4·K (with
 * K > 0 four prints at least). Necessary; an arrangement must still be found.
 *
 * @param supply blocks there are of each print
 *
 * @example
 * canLay({ columns: 2, rows: 2 }, [1, 1, 1, 1], 'corners') // => true
 * canLay({ columns: 2, rows: 2 }, [9, 9, 9], 'corners') // => false
 */
export function canLay(grid: Grid, supply: readonly number[], touch: Touch): boolean {
  const fill = (most: number) => supply.reduce((sum, blocks) => sum + Math.min(blocks, most), 0);
  if (fill(mostApart(grid, touch)) < grid.columns * grid.rows) return false;
  const squares = Math.floor(grid.columns / 2) * Math.floor(grid.rows / 2);
  return touch === 'sides' || fill(squares) >= 4 * squares;
}
