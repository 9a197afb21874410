import type { PlanInput, SwatchInput } from '../contract.ts';
import { FABRICS } from '../tables/fabrics.ts';
import { doubtSize } from './doubt-size.ts';
import { fitCourses, groupSwatches, type SwatchCourse } from './read-swatches.ts';
import type { WashedLayer } from './shrink-quilt.ts';
import { shrinkSandwich, type WashedShrink, withCourses } from './shrink-sandwich.ts';

/** The intervals of a plan are those of 95 in 100. */
const CONFIDENCE = 0.95;

/** Names of swatches that speak for a layer or for the whole. */
const TELLING_NAMES: ReadonlySet<string> = new Set([
  'sandwich',
  ...FABRICS.map(({ name }) => name),
]);

type MeasuredWish = Pick<PlanInput, 'layers' | 'swatches' | 'grain' | 'washes'>;

/** Courses already fitted, by the list of swatches itself: one plan asks for them many times over. */
const fitted = new WeakMap<readonly SwatchInput[], readonly SwatchCourse[]>();

/**
 * The courses that the swatches of a plan allow: those of fabrics that a layer may be of, and of
 * quilted test blocks. Swatches under other names tell of themselves alone.
 */
export function coursesOf({ swatches }: Pick<PlanInput, 'swatches'>): readonly SwatchCourse[] {
  const known = fitted.get(swatches);
  if (known !== undefined) return known;
  const telling = swatches.filter(({ fabric }) => TELLING_NAMES.has(fabric));
  const courses = fitCourses(groupSwatches(telling, CONFIDENCE));
  fitted.set(swatches, courses);
  return courses;
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
 * How many quilted test blocks would halve the doubt of a plan's washed size; nothing where thirty
 * would not.
 */
export function blocksToHalve(input: MeasuredWish, shrink: WashedShrink): number | undefined {
  const groups = coursesOf(input).flatMap((course) => course.groups);
  return doubtSize(shrink, groups, { confidence: CONFIDENCE, washes: input.washes }).blocks;
}
