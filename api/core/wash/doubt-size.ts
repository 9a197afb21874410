import type { Pair } from '../contract.ts';
import { USUAL_RATE } from '../tables/fabrics.ts';
import { countSwatches, USUAL_SPREAD } from './count-swatches.ts';
import type { SwatchGroup } from './read-swatches.ts';
import type { WashedShrink } from './shrink-sandwich.ts';

/** How far the washed quilt may come out from what is expected. */
export interface SizeDoubt {
  /** Half the width of the interval each way, percent points of the sewn size. */
  readonly percent: Pair;
  /** Quilted test blocks, washed once and measured both ways, that would halve it. */
  readonly blocks?: number;
}

/**
 * The doubt of a washed size, and how many quilted test blocks would halve it.
 *
 * Test blocks take the place of every model, so their interval for one new piece is the doubt that is
 * left: the least number is that whose interval, at the spread that was measured or else a usual one,
 * is at most half as wide. After more than one wash the interval of blocks washed once grows with the
 * usual course. Swatches of the single cloths cannot promise as much, since how they settle together
 * stays a model.
 *
 * @param asked `confidence` as a share, `washes` that the doubt is told for
 */
export function doubtSize(
  shrink: Pick<WashedShrink, 'least' | 'most'>,
  groups: readonly Pick<SwatchGroup, 'sd' | 'n'>[],
  asked: { readonly confidence: number; readonly washes: number },
): SizeDoubt {
  const half = (side: 'width' | 'height') => 50 * (shrink.most[side] - shrink.least[side]);
  const percent = { width: half('width'), height: half('height') };
  const growth = (1 - USUAL_RATE ** asked.washes) / (1 - USUAL_RATE);
  const narrowest = Math.min(percent.width, percent.height);
  const blocks = countSwatches(narrowest / 2 / growth, asked.confidence, pooledSpread(groups));
  return { percent, ...(blocks !== undefined && { blocks }) };
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
