import type { LayerInput, WashInput } from '../contract.ts';
import { findFabric } from '../tables/fabrics.ts';
import { shrinkAfter } from './follow-course.ts';
import type { Direction, SwatchCourse } from './read-swatches.ts';
import {
  type CourseRange,
  isMeasured,
  type QuiltShrink,
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
 * The shrink of the sandwich: by a measured sandwich swatch where both directions were washed, since
 * that beats any model; else by its layers, each with its own swatches where there are some.
 */
export function shrinkSandwich(
  input: WashSubject,
  courses: readonly SwatchCourse[],
  washes: number,
): WashedShrink {
  const along = findCourse(courses, 'sandwich', 'length')?.range;
  const across = findCourse(courses, 'sandwich', 'width')?.range;
  if (along !== undefined && across !== undefined) {
    return {
      washes,
      ...shrinkAsMeasured({ along, across }, input.grain, washes),
      isMeasured: true,
    };
  }
  const layers = input.layers.map((layer) => withCourses(layer, courses));
  const known = layers.every(
    (layer) =>
      (layer.courses?.length !== undefined && layer.courses.width !== undefined) ||
      isMeasured(layer, findFabric(layer.fabric)),
  );
  return { washes, ...shrinkQuilt({ layers, grain: input.grain, washes }), isMeasured: known };
}

/**
 * A layer with the courses of swatches that bear its fabric's name.
 */
export function withCourses(layer: LayerInput, courses: readonly SwatchCourse[]): WashedLayer {
  const range = (direction: Direction) => {
    const found = findCourse(courses, layer.fabric, direction)?.range;
    return found === undefined ? {} : { [direction]: found };
  };
  return { ...layer, courses: { ...range('length'), ...range('width') } };
}

function findCourse(
  courses: readonly SwatchCourse[],
  fabric: string,
  direction: Direction,
): SwatchCourse | undefined {
  return courses.find((course) => course.fabric === fabric && course.direction === direction);
}

function shrinkAsMeasured(
  ranges: { readonly along: CourseRange; readonly across: CourseRange },
  grain: WashInput['grain'],
  washes: number,
): Pick<WashedShrink, 'usual' | 'least' | 'most'> {
  const at = (doubt: keyof CourseRange): QuiltShrink => {
    const height = shrinkAfter(ranges.along[doubt], washes);
    const width = shrinkAfter(ranges.across[doubt], washes);
    const mean = (height + width) / 2;
    return grain === 'aligned' ? { width, height } : { width: mean, height: mean };
  };
  return { usual: at('usual'), least: at('low'), most: at('high') };
}
