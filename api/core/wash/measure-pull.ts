import type { LayerPull, WashInput } from '../contract.ts';
import { roundTo } from '../length.ts';
import { shrinkAfter } from './follow-course.ts';
import type { SwatchCourse } from './read-swatches.ts';
import { settleSandwich } from './settle-sandwich.ts';
import { layerPulls } from './shrink-quilt.ts';
import { findRanges, withCourses } from './shrink-sandwich.ts';

/** A pull that no hand feels, percent points: common practice, no source. */
const EVEN = 0.5;

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
  return input.layers.map((layer, index) => {
    const length = along[index] ?? 0;
    const width = across[index] ?? 0;
    return { layer: layer.role, length, width, says: describePull(length, width) };
  });
}

/**
 * What a layer does where it pulls hardest: `tight`, `puckers`, or `even` within half a percent point.
 *
 * @example
 * describePull(0.2, -1.4) // => 'puckers'
 */
export function describePull(length: number, width: number): LayerPull['says'] {
  const hardest = Math.abs(length) >= Math.abs(width) ? length : width;
  if (Math.abs(hardest) <= EVEN) return 'even';
  return hardest > 0 ? 'tight' : 'puckers';
}
