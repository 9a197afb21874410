import type { LayerInput, WashInput } from '../contract.ts';
import { findFabric } from '../tables/fabrics.ts';
import type { Direction, SwatchCourse } from './read-swatches.ts';
import {
  isMeasured,
  type QuiltShrink,
  type SandwichCourses,
  shrinkQuilt,
  type WashedLayer,
} from './shrink-quilt.ts';

/** How far the whole sandwich shrinks after a number of washes; fractions. */
export interface WashedShrink {
  readonly washes: number;
  readonly usual: QuiltShrink;
  readonly least: QuiltShrink;
  readonly most: QuiltShrink;
  /** False where a rate came from the fabric table. */
  readonly isMeasured: boolean;
}

type WashSubject = Pick<WashInput, 'layers' | 'grain'>;

/**
 * The shrink of the sandwich: by a measured sandwich swatch in each direction that it was measured in,
 * since that beats any model; else by its layers, each with its own swatches where there are some.
 */
export function shrinkSandwich(
  input: WashSubject,
  courses: readonly SwatchCourse[],
  washes: number,
): WashedShrink {
  const layers = input.layers.map((layer) => withCourses(layer, courses));
  const sandwich = findRanges(courses, 'sandwich');
  const isKnown = (direction: Direction) =>
    sandwich[direction] !== undefined ||
    layers.every(
      (layer) =>
        layer.courses?.[direction] !== undefined || isMeasured(layer, findFabric(layer.fabric)),
    );
  return {
    washes,
    ...shrinkQuilt({ layers, grain: input.grain, washes, sandwich }),
    isMeasured: isKnown('length') && isKnown('width'),
  };
}

/**
 * A layer with the courses of swatches that bear its fabric's name.
 */
export function withCourses(layer: LayerInput, courses: readonly SwatchCourse[]): WashedLayer {
  return { ...layer, courses: findRanges(courses, layer.fabric) };
}

/**
 * What swatches of one name say along and across the cloth.
 */
export function findRanges(courses: readonly SwatchCourse[], fabric: string): SandwichCourses {
  const range = (direction: Direction) => {
    const found = courses.find((row) => row.fabric === fabric && row.direction === direction);
    return found === undefined ? {} : { [direction]: found.range };
  };
  return { ...range('length'), ...range('width') };
}
