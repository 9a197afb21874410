import type { LayerPull, WashAnswer, WashInput } from '../contract.ts';
import { roundTo } from '../length.ts';
import { shrinkAfter } from './follow-course.ts';
import type { SwatchCourse } from './read-swatches.ts';
import { settleSandwich } from './settle-sandwich.ts';
import { layerPulls } from './shrink-quilt.ts';
import { findRanges, withCourses } from './shrink-sandwich.ts';

/** Pulls farther apart than this, in percent points, pucker a face: common practice, no source. */
export const PULL_LIMIT = 2;

/**
 * How much each layer wants to shrink beyond the quilt as a whole, kᵢ − k, along and across the
 * cloth: above zero it is tight, below zero it puckers. The quilt as a whole is what a sandwich swatch
 * says where there is one, else the rest point of the layers.
 *
 * @returns percent, in the order of the layers
 */
export function measurePull(
  input: Pick<WashInput, 'layers'>,
  courses: readonly SwatchCourse[],
  after: { readonly washes: number },
): readonly LayerPull[] {
  const layers = input.layers.map((layer) => withCourses(layer, courses));
  const pullsOf = (direction: 'length' | 'width') => {
    const wants = layerPulls({ layers, washes: after.washes }, direction);
    const measured = findRanges(courses, 'sandwich')[direction]?.usual;
    const rest =
      measured === undefined ? settleSandwich(wants) : shrinkAfter(measured, after.washes);
    return wants.map((want) => roundTo(100 * (want.rate - rest), 4));
  };
  const along = pullsOf('length');
  const across = pullsOf('width');
  return input.layers.map((layer, index) => ({
    layer: layer.role,
    length: along[index] ?? 0,
    width: across[index] ?? 0,
  }));
}

/**
 * Whether to prewash, with the reason: where two layers pull farther apart than `PULL_LIMIT`.
 *
 * @param washed whether each layer, in the order of `pull`, was prewashed already
 *
 * @example
 * adviseOnPrewash([{ layer: 'top', length: -1, width: 0 }, { layer: 'backing', length: 0.5, width: 0 }]).advised // => false
 */
export function adviseOnPrewash(
  pull: readonly LayerPull[],
  washed: readonly boolean[] = [],
): WashAnswer['prewash'] {
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
  const cure = `prewash the ${tight.layer}${again}`;
  return {
    advised: true,
    why: `The layers pull ${words} apart, more than ${PULL_LIMIT}: ${cure}, or the other face will pucker.`,
  };
}

function spread(pull: readonly LayerPull[], direction: 'length' | 'width'): number {
  const values = pull.map((layer) => layer[direction]);
  return Math.max(...values) - Math.min(...values);
}
