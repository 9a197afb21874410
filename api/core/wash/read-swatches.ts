import type { WashInput } from '../contract.ts';
import { FABRICS } from '../tables/fabrics.ts';
import { type FittedCourse, fitCourse } from './fit-course.ts';
import { dimensionalChange, type MeasuredChange, measureChange } from './measure-change.ts';
import type { CourseRange } from './shrink-quilt.ts';

export type Direction = 'length' | 'width';
type SwatchInput = WashInput['swatches'][number];

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
  /** Absent where no wash count had two specimens, so that nothing is known of the spread. */
  readonly range?: CourseRange;
}

/** Share left after each wash for a cloth that the table does not know. */
const USUAL_RATE = 2 / 7;

/**
 * Gathers specimens by cloth, direction and wash count, with mean, spread and intervals.
 *
 * @param confidence share between 0 and 1
 * @returns groups in the order in which they first appear, fewer washes first within a cloth
 */
export function groupSwatches(
  swatches: readonly SwatchInput[],
  confidence: number,
): readonly SwatchGroup[] {
  const clothOf = (swatch: SwatchInput) => `${swatch.direction} ${swatch.fabric}`;
  const cloths = Map.groupBy(swatches, clothOf);
  return [...cloths.values()].flatMap((cloth) =>
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
 * for one new piece, at the wash count with the most specimens, scale the whole course.
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
    const range = rangeOf(course, cloth);
    return { fabric, direction, course, groups: cloth, ...(range && { range }) };
  });
}

function rangeOf(course: FittedCourse, groups: readonly SwatchGroup[]): CourseRange | undefined {
  const spread = groups.filter((group) => group.next !== undefined);
  const best = spread.toSorted((one, other) => other.n - one.n)[0];
  if (best?.next === undefined) return undefined;
  const half = (best.next.high - best.next.low) / 200;
  const scaled = half / (1 - course.rate ** best.washes);
  return {
    low: { rate: course.rate, limit: course.limit - scaled },
    usual: { rate: course.rate, limit: course.limit },
    high: { rate: course.rate, limit: course.limit + scaled },
  };
}
