import { buyCloth } from '../cloth/buy-cloth.ts';
import { roundTo } from '../length.ts';
import { countSnips } from '../sewing/count-snips.ts';
import { measureSeams } from '../sewing/measure-seams.ts';
import { timeWork } from '../sewing/time-work.ts';
import { washedSize } from '../wash/size-washed.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { SizeWish } from '../wish/resolve-target.ts';
import { proposeGrids } from './propose-grids.ts';
import { type Extent, type Grid, sewnSize } from './size-quilt.ts';

/** A block size and a grid, with what tells it from others. Lengths in millimetres. */
export interface Candidate {
  readonly cut: number;
  readonly grid: Grid;
  readonly washed: Extent;
  /** Size less the wish, signed, in the sense of the wish. */
  readonly fit: Extent;
  /** Cloth bought over all layers, in the unit it is bought by (yards or metres). */
  readonly fabric: number;
  readonly minutes: number;
}

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
  const cloth = buyCloth({ ...spec, blocks: grid.columns * grid.rows, cut });
  const work = {
    grid,
    pieces: cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0),
    seams: measureSeams(grid, block, spec.stitching.borderPasses),
    snips: countSnips(grid, block).beforeJoining,
    borderPasses: spec.stitching.borderPasses,
  };
  return {
    cut,
    grid,
    washed,
    fit: { width: size.width - wish.width, height: size.height - wish.height },
    fabric: roundTo(
      cloth.reduce((sum, need) => sum + need.buy.amount, 0),
      4,
    ),
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
  const sewn =
    wish.at === 'sewn'
      ? wish
      : { width: wish.width / (1 - shrink.width), height: wish.height / (1 - shrink.height) };
  const cuts = [...new Set(spec.cut === undefined ? spec.cuts : [...spec.cuts, spec.cut])];
  return cuts
    .flatMap((cut) =>
      proposeGrids(sewn, { cut, seam: spec.edges.seam }).map((grid) =>
        weighCandidate(spec, wish, { cut, grid, shrink }),
      ),
    )
    .toSorted(byFit);
}

/** Best fit first; a hundredth of a millimetre is no difference; then fewer blocks. */
function byFit(one: Candidate, other: Candidate): number {
  const gap = misfit(one) - misfit(other);
  return Math.abs(gap) > 0.01 ? gap : countBlocks(one) - countBlocks(other);
}

function countBlocks(candidate: Candidate): number {
  return candidate.grid.columns * candidate.grid.rows;
}

/**
 * The worse of how far width and height miss the wish, mm.
 *
 * @example
 * misfit({ fit: { width: -3, height: 2 } }) // => 3
 */
export function misfit(candidate: Pick<Candidate, 'fit'>): number {
  return Math.max(Math.abs(candidate.fit.width), Math.abs(candidate.fit.height));
}

/**
 * The candidates that no other beats: none is at least as good in fit, cloth and minutes and better
 * in one of them (Pareto's rule). Order is kept; of equals the first stays.
 */
export function keepUnbeaten(candidates: readonly Candidate[]): readonly Candidate[] {
  return candidates.filter(
    (candidate, index) =>
      !candidates.some((other, at) => at !== index && beats(other, candidate, at < index)),
  );
}

function beats(one: Candidate, other: Candidate, isEarlier: boolean): boolean {
  const gaps = [
    misfit(one) - misfit(other),
    one.fabric - other.fabric,
    one.minutes - other.minutes,
  ];
  if (gaps.some((gap) => gap > 1e-9)) return false;
  return isEarlier || gaps.some((gap) => gap < -1e-9);
}
