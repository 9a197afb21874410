import type { Pair } from '../contract.ts';
import { countSwatches, USUAL_SPREAD } from './count-swatches.ts';
import type { SwatchGroup } from './read-swatches.ts';
import type { WashedShrink } from './shrink-sandwich.ts';

/** How far the washed quilt may come out from what is expected. */
export interface SizeDoubt {
  /** Half the width of the interval each way, percent points of the sewn size. */
  readonly percent: Pair;
  /** Swatches a cloth and direction that would halve it. */
  readonly swatches?: number;
}

/**
 * The doubt of a washed size, and how many swatches would halve it: those whose interval for one
 * new piece, at the spread that was measured or else a usual one, is half as wide as the doubt.
 * Own model: it takes the quilt to follow its cloth point for point, as it does where one cloth rules.
 *
 * @param confidence share between 0 and 1
 */
export function doubtSize(
  shrink: Pick<WashedShrink, 'least' | 'most'>,
  groups: readonly Pick<SwatchGroup, 'sd' | 'n'>[],
  confidence: number,
): SizeDoubt {
  const half = (side: 'width' | 'height') => 50 * (shrink.most[side] - shrink.least[side]);
  const percent = { width: half('width'), height: half('height') };
  const widest = Math.max(percent.width, percent.height);
  const swatches = countSwatches(widest / 2, confidence, pooledSpread(groups));
  return { percent, ...(swatches !== undefined && { swatches }) };
}

/** Pooled standard deviation √(Σ(n − 1)s² / Σ(n − 1)) of the groups that have one. */
function pooledSpread(groups: readonly Pick<SwatchGroup, 'sd' | 'n'>[]): number {
  let squares = 0;
  let freedom = 0;
  for (const { sd, n } of groups) {
    if (sd === undefined) continue;
    squares += (n - 1) * sd ** 2;
    freedom += n - 1;
  }
  return freedom === 0 || squares === 0 ? USUAL_SPREAD : Math.sqrt(squares / freedom);
}
