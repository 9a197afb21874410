import { sumCloth } from '../cloth/buy-cloth.ts';
import { roundTo } from '../length.ts';
import { countSnips } from '../sewing/count-snips.ts';
import { measureSeams } from '../sewing/measure-seams.ts';
import { timeWork } from '../sewing/time-work.ts';
import { sewFor, washedSize } from '../wash/size-washed.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import { proposeGrids } from './propose-grids.ts';
import { byFit, type Candidate } from './rank-options.ts';
import { type Extent, type Grid, sewnSize } from './size-quilt.ts';

/**
 * Weighs one block size and grid against a wish.
 *
 * @param shrink fractions each way
 */
export function weighCandidate(
  spec: PlanSpec,
  wish: SizeWish,
  option: { readonly cut: number; readonly grid: Grid; readonly shrink: Extent },
): Candidate {
  const { cut, grid, shrink } = option;
  const block = { cut, ...spec.edges };
  const sewn = sewnSize(grid, block);
  const washed = washedSize(sewn, shrink);
  const size = wish.at === 'sewn' ? sewn : washed;
  const { pieces, bought } = sumCloth({ ...spec, blocks: grid.columns * grid.rows, cut });
  const work = {
    grid,
    pieces,
    seams: measureSeams(grid, block, spec.stitching.borderPasses),
    snips: countSnips(grid, block).beforeJoining,
    borderPasses: spec.stitching.borderPasses,
  };
  return {
    cut,
    grid,
    washed,
    fit: { width: size.width - wish.width, height: size.height - wish.height },
    fabric: roundTo(bought, 4),
    minutes: timeWork(work, spec.pace).total,
  };
}

/**
 * Every block size and grid near a wish, best fit first, ties to fewer blocks.
 *
 * @param shrink fractions each way, to find the size to sew for a washed wish
 */
export function listCandidates(
  spec: PlanSpec,
  wish: SizeWish,
  shrink: Extent,
): readonly Candidate[] {
  const sewn = wish.at === 'sewn' ? wish : sewFor(wish, shrink);
  const cuts = [...new Set(spec.cut === undefined ? spec.cuts : [...spec.cuts, spec.cut])];
  return cuts
    .flatMap((cut) =>
      proposeGrids(sewn, { cut, seam: spec.edges.seam }).map((grid) =>
        weighCandidate(spec, wish, { cut, grid, shrink }),
      ),
    )
    .toSorted(byFit);
}
