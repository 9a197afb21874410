import type { LayerInput } from '../contract.ts';
import { findFabric } from '../tables/fabrics.ts';
import { courseThrough, shrinkAfter } from './follow-course.ts';

/**
 * What one prewash takes from the cloth of a layer before it is cut, along and across the roll.
 *
 * @returns fractions, both 0 where the layer is not prewashed
 *
 * @example
 * prewashRates({ fabric: 'flannel', prewashed: false, shrink: { length: 6, width: 3 }, shrinkWashes: 1 }) // => { length: 0, width: 0 }
 */
export function prewashRates(
  layer: Pick<LayerInput, 'fabric' | 'prewashed' | 'shrink' | 'shrinkWashes'>,
): { readonly length: number; readonly width: number } {
  if (!layer.prewashed) return { length: 0, width: 0 };
  const { rate } = findFabric(layer.fabric);
  const first = (percent: number) =>
    shrinkAfter(courseThrough(percent / 100, layer.shrinkWashes, rate), 1);
  return { length: first(layer.shrink.length), width: first(layer.shrink.width) };
}
