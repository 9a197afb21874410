import { roundTo } from '../length.ts';
import type { Extent, Grid } from './size-quilt.ts';

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
 * Puts candidates in order: best fit first, to the hundredth of a millimetre; then fewer blocks.
 *
 * @returns below 0 where `one` comes first
 */
export function byFit(one: Candidate, other: Candidate): number {
  const gap = roundTo(misfit(one), 2) - roundTo(misfit(other), 2);
  return gap !== 0 ? gap : countBlocks(one) - countBlocks(other);
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

/**
 * Whether two candidates are the same blocks in the same grid.
 *
 * @example
 * isSame({ cut: 200, grid: { columns: 2, rows: 3 } }, { cut: 200, grid: { columns: 2, rows: 3 } }) // => true
 */
export function isSame(
  one: Pick<Candidate, 'cut' | 'grid'>,
  other: Pick<Candidate, 'cut' | 'grid'>,
): boolean {
  return (
    one.cut === other.cut &&
    one.grid.columns === other.grid.columns &&
    one.grid.rows === other.grid.rows
  );
}

/**
 * Two parts in a hundred of the longer side: less than an unmeasured wash leaves in doubt.
 * Own judgement, no source.
 */
export const NEAR = 0.02;

/**
 * The plan to show first: of the unbeaten that fit within `NEAR` of the best fit, the one with the
 * fewest blocks, ties to the better fit. An inch on a bed is not worth a hundred blocks more, since
 * no wash is known so closely.
 *
 * @param candidates at least one, best fit first
 */
export function chooseHandiest(candidates: readonly Candidate[]): Candidate {
  const [best] = candidates;
  if (best === undefined) throw new Error('No plan was left after the checks');
  const band = NEAR * Math.max(best.washed.width, best.washed.height);
  const near = keepUnbeaten(candidates).filter(
    (candidate) => misfit(candidate) <= misfit(best) + band,
  );
  return near.reduce((handiest, candidate) =>
    countBlocks(candidate) < countBlocks(handiest) ? candidate : handiest,
  );
}
