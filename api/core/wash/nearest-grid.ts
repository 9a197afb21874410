import { proposeGrids } from '../block/propose-grids.ts';
import { byFit, type Candidate, chooseHandiest } from '../block/rank-options.ts';
import { faceOf } from '../block/size-block.ts';
import { type Extent, sewnSize } from '../block/size-quilt.ts';
import { sewFor, washedSize } from './size-washed.ts';

/** A wanted size with the blocks it may be made of; mm. */
export interface GridWish {
  readonly wanted: Extent;
  /** Fractions each way. */
  readonly shrink: Extent;
  readonly seam: number;
  readonly cuts: readonly number[];
}

export interface NearestGrid extends Pick<Candidate, 'cut' | 'grid' | 'washed' | 'fit'> {
  readonly sewn: Extent;
}

/**
 * The block and grid whose washed size comes nearest to a wanted one: of those within two parts in
 * a hundred of the best fit, the one with the fewest blocks (see `chooseHandiest`).
 *
 * @returns nothing where no cut size leaves a face, or none makes a quilt within the limits
 */
export function nearestGrid(wish: GridWish): NearestGrid | undefined {
  const { wanted, shrink, seam } = wish;
  const candidates = wish.cuts
    .filter((cut) => faceOf({ cut, seam }) > 1e-9)
    .flatMap((cut) =>
      proposeGrids(sewFor(wanted, shrink), { cut, seam }).map((grid): Candidate => {
        const washed = washedSize(sewnSize(grid, { cut, seam }), shrink);
        const fit = { width: washed.width - wanted.width, height: washed.height - wanted.height };
        return { cut, grid, washed, fit, fabric: 0, minutes: grid.columns * grid.rows };
      }),
    )
    .toSorted(byFit);
  if (candidates.length === 0) return undefined;
  const { cut, grid, washed, fit } = chooseHandiest(candidates);
  return { cut, grid, washed, fit, sewn: sewnSize(grid, { cut, seam }) };
}
