import type { LayerPull, WashAnswer, WashInput } from '../contract.ts';
import { roundTo } from '../length.ts';
import type { SwatchCourse } from './read-swatches.ts';
import { settleSandwich } from './settle-sandwich.ts';
import { layerPulls } from './shrink-quilt.ts';
import { withCourses } from './shrink-sandwich.ts';

/** Pulls farther apart than this, in percent points, pucker a face: common practice, no source. */
export const PULL_LIMIT = 2;

/**
 * How much each layer wants to shrink beyond the quilt as a whole, kᵢ − k, along and across the
 * cloth: above zero it is tight, below zero it puckers.
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
    const rest = settleSandwich(wants);
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
 * @example
 * adviseOnPrewash([{ layer: 'top', length: -1, width: 0 }, { layer: 'backing', length: 0.5, width: 0 }]).advised // => false
 */
export function adviseOnPrewash(pull: readonly LayerPull[]): WashAnswer['prewash'] {
  const gap = Math.max(spread(pull, 'length'), spread(pull, 'width'));
  const tight = pull.toSorted((one, other) => greatest(other) - greatest(one))[0];
  const words = `${roundTo(gap, 1)} percent points`;
  if (gap <= PULL_LIMIT || tight === undefined) {
    return {
      advised: false,
      why: `The layers pull at most ${words} apart, within ${PULL_LIMIT}: they will settle together.`,
    };
  }
  return {
    advised: true,
    why: `The layers pull ${words} apart, more than ${PULL_LIMIT}: prewash the ${tight.layer}, or the other face will pucker.`,
  };
}

function spread(pull: readonly LayerPull[], direction: 'length' | 'width'): number {
  const values = pull.map((layer) => layer[direction]);
  return Math.max(...values) - Math.min(...values);
}

function greatest(pull: LayerPull): number {
  return Math.max(pull.length, pull.width);
}
