import type { Extent } from '../block/size-quilt.ts';
import type { Course, Pair, SwatchResult, Unit, WashAnswer } from '../contract.ts';
import { roundTo } from '../length.ts';
import { shrinkAfter } from './follow-course.ts';
import { readingError } from './measure-change.ts';
import type { SwatchCourse, SwatchGroup } from './read-swatches.ts';
import type { WashedShrink } from './shrink-sandwich.ts';

/** The smallest mark that a maker reads: an eighth of an inch, a millimetre. In the unit itself. */
const DIVISION = { in: 0.125, cm: 0.1 } as const;

const percent = (value: number) => roundTo(value, 4);

/**
 * Writes what one group of specimens says; percent, negative is shrinkage.
 */
export function writeGroup(group: SwatchGroup, unit: Unit): SwatchResult {
  const errors = group.specimens.map(({ before, after }) =>
    readingError({ before, after, division: DIVISION[unit] }),
  );
  const { sd, interval, next } = group;
  return {
    fabric: group.fabric,
    direction: group.direction,
    washes: group.washes,
    change: percent(group.mean),
    n: group.n,
    ...(sd !== undefined && { sd: percent(sd) }),
    ...(interval && { low: percent(interval.low), high: percent(interval.high) }),
    ...(next && { nextLow: percent(next.low), nextHigh: percent(next.high) }),
    reading: percent(Math.max(...errors)),
  };
}

/**
 * Writes the course of a cloth, with its change after each of the wash counts asked for.
 */
export function writeCourse(
  { fabric, direction, course }: SwatchCourse,
  washes: readonly number[],
): Course {
  return {
    fabric,
    direction,
    limit: percent(-100 * course.limit),
    rate: percent(course.rate),
    ...(course.error !== undefined && { error: percent(100 * course.error) }),
    points: washes.map((count) => ({
      washes: count,
      change: percent(-100 * shrinkAfter(course, count)),
    })),
  };
}

/**
 * Writes the dimensional change of the sandwich after one wash count.
 */
export function writeSandwich(shrink: WashedShrink): WashAnswer['sandwich'][number] {
  const change = (extent: Extent): Pair => ({
    width: percent(-100 * extent.width),
    height: percent(-100 * extent.height),
  });
  return {
    washes: shrink.washes,
    change: change(shrink.usual),
    low: change(shrink.most),
    high: change(shrink.least),
  };
}
