import type { LayerPull, Unit, WashAnswer } from '../contract.ts';
import { roundTo } from '../length.ts';
import { writeLength } from '../write-length.ts';

/** Pulls farther apart than this, in percent points, pucker a face: common practice, no source. */
export const PULL_LIMIT = 2;

/** How far the quilt may miss the size that was wanted, against how near it must come; mm. */
export interface FitDoubt {
  readonly unit: Unit;
  /** Half the width of the interval of the washed size, the greater of both ways. */
  readonly half: number;
  readonly fit: number;
  /** Quilted test blocks that would halve the doubt. */
  readonly blocks?: number;
}

/**
 * Whether to prewash, with the reasons: two layers pull farther apart than `PULL_LIMIT`, or the
 * washed size is in doubt by more than the fit that was asked for.
 *
 * @param washed whether each layer, in the order of `pull`, was prewashed already
 *
 * @example
 * advisePrewash([{ layer: 'top', length: -1, width: 0, says: 'puckers' }, { layer: 'backing', length: 0.5, width: 0, says: 'even' }]).advised // => false
 */
export function advisePrewash(
  pull: readonly LayerPull[],
  washed: readonly boolean[] = [],
  doubt?: FitDoubt,
): WashAnswer['prewash'] {
  const pulled = advisePull(pull, washed);
  const doubtful = doubt !== undefined && doubt.half > doubt.fit;
  const why = [pulled.why, ...(doubtful ? [describeDoubt(doubt)] : [])].join(' ');
  const reasons = [
    ...(pulled.advised ? (['pull'] as const) : []),
    ...(doubtful ? (['doubt'] as const) : []),
  ];
  return { advised: reasons.length > 0, why, reasons };
}

function describeDoubt({ half, fit, unit, blocks }: FitDoubt): string {
  const either = writeLength(half, unit);
  const more =
    blocks === undefined
      ? 'the cloth itself varies more than that'
      : `${blocks} washed test blocks would halve the doubt`;
  return `The washed size may be off by ${either} either way, more than the ${writeLength(fit, unit)} asked for: prewash, or measure more; ${more}.`;
}

function advisePull(
  pull: readonly LayerPull[],
  washed: readonly boolean[],
): { readonly advised: boolean; readonly why: string } {
  const way = spread(pull, 'length') >= spread(pull, 'width') ? 'length' : 'width';
  const gap = spread(pull, way);
  const tight = pull.toSorted((one, other) => other[way] - one[way])[0];
  const words = `${roundTo(gap, 1)} percent points`;
  if (gap <= PULL_LIMIT || tight === undefined) {
    return {
      advised: false,
      why: `The layers pull at most ${words} apart, within ${PULL_LIMIT}: they will settle together.`,
    };
  }
  const again = washed[pull.indexOf(tight)] === true ? ' once more' : '';
  const cure =
    tight.layer === 'middle'
      ? 'choose another middle, or wash a test block and judge by it, since batting is seldom prewashed'
      : `prewash the ${tight.layer}${again}`;
  return {
    advised: true,
    why: `The layers pull ${words} apart, more than ${PULL_LIMIT}: ${cure}, or the other face will pucker.`,
  };
}

function spread(pull: readonly LayerPull[], direction: 'length' | 'width'): number {
  const values = pull.map((layer) => layer[direction]);
  return Math.max(...values) - Math.min(...values);
}
