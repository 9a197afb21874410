import { isQuilt } from '../block/propose-grids.ts';
import { faceOf } from '../block/size-block.ts';
import { type Extent, type Grid, sewnSize } from '../block/size-quilt.ts';
import { NUMBER_LIMITS } from '../limits.ts';
import { sewFor, washedSize } from '../wash/size-washed.ts';
import type { StashSpec } from './stash-spec.ts';

/** A grid of blocks of one size, with its extent in millimetres. */
export interface GridSize extends Grid {
  readonly cut: number;
  readonly blocks: number;
  readonly sewn: Extent;
  readonly washed: Extent;
  /** How many times too wide or too narrow for its height, 1 or more. */
  readonly strain: number;
}

/** A quilt up to a quarter too wide or too narrow still has the shape asked for: own judgement. */
export const MOST_STRAIN = 1.25;
/** Fewer blocks are no quilt, unless they were asked for. */
export const FEWEST_BLOCKS = 4;

/** What a cut size makes of the shape asked for. */
interface Frame {
  readonly ratio: number;
  readonly columns: number;
  readonly rows: number;
}

/**
 * Every grid of one cut size that has the shape asked for (within `MOST_STRAIN`) and at least
 * `FEWEST_BLOCKS`, stays within the greatest quilt and does not go beyond the size to stop at: no
 * column or row more than the one that first reaches it. Most blocks first, then the nearest in shape.
 *
 * @param cut mm, its face above 0
 */
export function listGrids(spec: StashSpec, cut: number): readonly GridSize[] {
  const block = { cut, seam: spec.seam };
  const frame = frameAim(spec, cut);
  const fewest = Math.min(FEWEST_BLOCKS, frame.columns * frame.rows);
  const isSewn = 'wish' in spec.aim && spec.aim.wish.at === 'sewn';
  const side = ({ sewn, washed }: Pick<GridSize, 'sewn' | 'washed'>) => (isSewn ? sewn : washed);
  // Sides do not depend on each other, so each is sized once.
  const heights: Pick<GridSize, 'sewn' | 'washed'>[] = [];
  const grids: GridSize[] = [];
  for (let columns = 1; columns <= frame.columns; columns += 1) {
    const across = sizeGrid(spec, { columns, rows: 1 }, cut);
    for (let rows = 1; rows <= frame.rows && isQuilt({ columns, rows }, block); rows += 1) {
      const down = heights[rows] ?? sizeGrid(spec, { columns: 1, rows }, cut);
      heights[rows] = down;
      const ratio = side(across).width / side(down).height;
      // Each row more makes it narrower.
      if (ratio < frame.ratio / MOST_STRAIN - 1e-9) break;
      const strain = Math.max(ratio / frame.ratio, frame.ratio / ratio);
      const blocks = columns * rows;
      if (strain > MOST_STRAIN + 1e-9 || blocks < fewest) continue;
      const sewn = { width: across.sewn.width, height: down.sewn.height };
      const washed = { width: across.washed.width, height: down.washed.height };
      grids.push({ cut, columns, rows, blocks, sewn, washed, strain });
    }
  }
  return grids.toSorted((one, other) => other.blocks - one.blocks || one.strain - other.strain);
}

function sizeGrid(spec: StashSpec, grid: Grid, cut: number): Pick<GridSize, 'sewn' | 'washed'> {
  const sewn = sewnSize(grid, { cut, seam: spec.seam });
  return { sewn, washed: washedSize(sewn, spec.shrink) };
}

function ratioOf({ aim }: StashSpec, size: Pick<GridSize, 'sewn' | 'washed'>): number {
  const { width, height } = 'wish' in aim && aim.wish.at === 'sewn' ? size.sewn : size.washed;
  return width / height;
}

function frameAim(spec: StashSpec, cut: number): Frame {
  const { aim, shrink, seam } = spec;
  const most = { columns: NUMBER_LIMITS.columns.most, rows: NUMBER_LIMITS.rows.most };
  if ('ratio' in aim) return { ratio: aim.ratio, ...most };
  if ('grid' in aim) return { ratio: ratioOf(spec, sizeGrid(spec, aim.grid, cut)), ...aim.grid };
  const sewn = aim.wish.at === 'sewn' ? aim.wish : sewFor(aim.wish, shrink);
  const reach = (side: number) =>
    Math.max(1, Math.ceil((side - 2 * seam) / faceOf({ cut, seam }) - 1e-7));
  return {
    ratio: aim.wish.width / aim.wish.height,
    columns: Math.min(most.columns, reach(sewn.width)),
    rows: Math.min(most.rows, reach(sewn.height)),
  };
}
