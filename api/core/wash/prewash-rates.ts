import { findFabric } from '../tables/fabrics.ts';
import { courseThrough, shrinkAfter } from './follow-course.ts';
import type { WashedLayer } from './shrink-quilt.ts';

/**
 * What one prewash takes from the cloth of a layer before it is cut, along and across the roll: by its
 * swatches where there are some, else by its rates.
 *
 * @returns fractions, both 0 where the layer is not prewashed
 *
 * @example
 * prewashRates({ fabric: 'flannel', prewashed: false, shrink: { length: 6, width: 3 }, shrinkWashes: 1 }) // => { length: 0, width: 0 }
 */
export function prewashRates(
  layer: Pick<WashedLayer, 'fabric' | 'prewashed' | 'shrink' | 'shrinkWashes' | 'courses'>,
): { readonly length: number; readonly width: number } {
  if (!layer.prewashed) return { length: 0, width: 0 };
  const { rate } = findFabric(layer.fabric);
  const first = (direction: 'length' | 'width') =>
    shrinkAfter(
      layer.courses?.[direction]?.usual ??
        courseThrough(layer.shrink[direction] / 100, layer.shrinkWashes, rate),
      1,
    );
  return { length: first('length'), width: first('width') };
}
