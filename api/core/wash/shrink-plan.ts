import type { PlanInput } from '../contract.ts';
import { doubtSize } from './doubt-size.ts';
import { fitCourses, groupSwatches, type SwatchCourse } from './read-swatches.ts';
import type { WashedLayer } from './shrink-quilt.ts';
import { shrinkSandwich, type WashedShrink, withCourses } from './shrink-sandwich.ts';

/** The intervals of a plan are those of 95 in 100. */
const CONFIDENCE = 0.95;

type MeasuredWish = Pick<PlanInput, 'layers' | 'swatches' | 'grain' | 'washes'>;

/**
 * The courses that the swatches of a plan allow.
 */
export function coursesOf(input: Pick<PlanInput, 'swatches'>): readonly SwatchCourse[] {
  return fitCourses(groupSwatches(input.swatches, CONFIDENCE));
}

/**
 * The layers of a plan, each with the courses of its own swatches where there are some.
 */
export function measuredLayers(
  input: Pick<PlanInput, 'layers' | 'swatches'>,
): readonly WashedLayer[] {
  const courses = coursesOf(input);
  return input.layers.map((layer) => withCourses(layer, courses));
}

/**
 * How far the quilt of a plan shrinks, by measured swatches where there are some, else by its fabrics.
 */
export function shrinkPlan(input: MeasuredWish): WashedShrink {
  return shrinkSandwich(input, coursesOf(input), input.washes);
}

/**
 * How many swatches of each cloth, each way, would halve the doubt of a plan's washed size; nothing
 * where thirty would not.
 */
export function swatchesToHalve(input: MeasuredWish, shrink: WashedShrink): number | undefined {
  return doubtSize(shrink, groupSwatches(input.swatches, CONFIDENCE), CONFIDENCE).swatches;
}
