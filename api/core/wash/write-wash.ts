import type { Extent } from '../block/size-quilt.ts';
import type { Course, Pair, SwatchNote, SwatchResult, Unit, WashAnswer } from '../contract.ts';
import { roundTo } from '../length.ts';
import { shrinkAfter } from './follow-course.ts';
import { readingError } from './measure-change.ts';
import { leanOf, measureSkew } from './measure-skew.ts';
import type { SwatchCourse, SwatchGroup } from './read-swatches.ts';
import type { WashedShrink } from './shrink-sandwich.ts';

/** The smallest mark that a maker reads: an eighth of an inch, a millimetre. In the unit itself. */
const DIVISION = { in: 0.125, cm: 0.1 } as const;

const percent = (value: number) => roundTo(value, 4);

/** What a group is seen against. */
export interface GroupFrame {
  readonly unit: Unit;
  /** Side of a block, in the unit, whose lean a skew is told by. */
  readonly side: number;
  /** All groups, to compare the same cloth after fewer washes. */
  readonly groups: readonly SwatchGroup[];
}

/**
 * Writes what one group of specimens says; percent, negative is shrinkage.
 */
export function writeGroup(group: SwatchGroup, { unit, side, groups }: GroupFrame): SwatchResult {
  const errors = group.specimens.map(({ before, after }) =>
    readingError({ before, after, division: DIVISION[unit] }),
  );
  const { sd, interval, next } = group;
  const reading = Math.max(...errors);
  return {
    fabric: group.fabric,
    direction: group.direction,
    washes: group.washes,
    change: percent(group.mean),
    n: group.n,
    ...(sd !== undefined && { sd: percent(sd) }),
    ...(interval && { low: percent(interval.low), high: percent(interval.high) }),
    ...(next && { nextLow: percent(next.low), nextHigh: percent(next.high) }),
    reading: percent(reading),
    ...writeSkew(group, side),
    notes: noteGroup(group, groups, reading),
  };
}

function noteGroup(
  group: SwatchGroup,
  groups: readonly SwatchGroup[],
  reading: number,
): readonly SwatchNote[] {
  const grewBack = groups.some(
    (other) =>
      other.fabric === group.fabric &&
      other.direction === group.direction &&
      other.washes < group.washes &&
      group.mean - other.mean > reading,
  );
  return [
    ...(group.n === 1 ? (['one-specimen'] as const) : []),
    ...(reading > Math.abs(group.mean) / 2 ? (['coarse-reading'] as const) : []),
    ...(grewBack ? (['grew-back'] as const) : []),
  ];
}

function writeSkew(group: SwatchGroup, side: number): Pick<SwatchResult, 'skew'> {
  const skews = group.specimens.flatMap(({ diagonals }) =>
    diagonals === undefined ? [] : [measureSkew(diagonals.ac, diagonals.bd)],
  );
  if (skews.length === 0) return {};
  const ordered = skews.toSorted((one, other) => one - other);
  const mean = ordered.reduce((sum, skew) => sum + skew, 0) / skews.length;
  const lean = roundTo(leanOf(mean, side), 4);
  return { skew: { mean: percent(mean), n: skews.length, lean, side } };
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
