import type { SwatchInput } from '../contract.ts';
import { FABRICS, USUAL_RATE } from '../tables/fabrics.ts';
import { clampLimit, type FittedCourse, fitCourse } from './fit-course.ts';
import { dimensionalChange, type MeasuredChange, measureChange } from './measure-change.ts';
import { type CourseRange, READING } from './shrink-quilt.ts';

export type Direction = 'length' | 'width';

/** Specimens of one cloth, direction and wash count. */
export interface SwatchGroup extends MeasuredChange {
  readonly fabric: string;
  readonly direction: Direction;
  readonly washes: number;
  readonly specimens: readonly SwatchInput[];
}

/** The course of one cloth in one direction, with the courses at the ends of its interval. */
export interface SwatchCourse {
  readonly fabric: string;
  readonly direction: Direction;
  readonly course: FittedCourse;
  readonly groups: readonly SwatchGroup[];
  readonly range: CourseRange;
}

/**
 * Gathers specimens by cloth, direction and wash count, with mean, spread and intervals.
 *
 * @param confidence share between 0 and 1
 * @returns groups by name of the cloth, then direction, then washes: the order of specimens does not show
 */
export function groupSwatches(
  swatches: readonly SwatchInput[],
  confidence: number,
): readonly SwatchGroup[] {
  const clothOf = (swatch: SwatchInput) => `${swatch.fabric} ${swatch.direction}`;
  const cloths = Map.groupBy(swatches, clothOf);
  const byName = [...cloths].toSorted(([one], [other]) => (one < other ? -1 : 1));
  return byName.flatMap(([, cloth]) =>
    [...Map.groupBy(cloth, (swatch) => swatch.washes)]
      .toSorted(([one], [other]) => one - other)
      .map(([washes, specimens]) => {
        const [first] = specimens;
        const changes = specimens.map(({ before, after }) => dimensionalChange(before, after));
        return {
          fabric: first?.fabric ?? '',
          direction: first?.direction ?? 'length',
          washes,
          specimens,
          ...measureChange(changes, confidence),
        };
      }),
  );
}

/**
 * Fits a course over washes to the groups of each cloth and direction. The ends of the interval
 * for one new piece, at the wash count with the most specimens, scale the whole course. Where no wash
 * count had two specimens nothing is known of their spread: then the reading of the ruler, or the
 * error of the fit where that is greater, stands in for it, as it does for a rate given by hand.
 */
export function fitCourses(groups: readonly SwatchGroup[]): readonly SwatchCourse[] {
  const cloths = Map.groupBy(groups, (group) => `${group.direction} ${group.fabric}`);
  return [...cloths.values()].map((cloth) => {
    const fabric = cloth[0]?.fabric ?? '';
    const direction = cloth[0]?.direction ?? 'length';
    const points = cloth.map((group) => ({
      washes: group.washes,
      shrink: -group.mean / 100,
      weight: group.n,
    }));
    const rate = FABRICS.find((row) => row.name === fabric)?.rate ?? USUAL_RATE;
    const course = fitCourse(points, rate);
    return { fabric, direction, course, groups: cloth, range: rangeOf(course, cloth) };
  });
}

function rangeOf(course: FittedCourse, groups: readonly SwatchGroup[]): CourseRange {
  const best = groups.toSorted((one, other) => other.n - one.n)[0];
  const half =
    best?.next === undefined
      ? Math.max(READING, course.error ?? 0)
      : (best.next.high - best.next.low) / 200;
  const scaled = half / (1 - course.rate ** (best?.washes ?? 1));
  const around = (limit: number) => ({ rate: course.rate, limit: clampLimit(limit) });
  return {
    low: around(course.limit - scaled),
    usual: around(course.limit),
    high: around(course.limit + scaled),
  };
}
