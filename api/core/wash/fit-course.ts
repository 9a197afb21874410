import { courseThrough, type ShrinkCourse, shrinkAfter } from './follow-course.ts';

/** One mean shrink measured after a number of washes. */
export interface CoursePoint {
  readonly washes: number;
  /** Fraction, positive when smaller. */
  readonly shrink: number;
  /** Specimens behind it, 1 or more. */
  readonly weight: number;
}

export interface FittedCourse extends ShrinkCourse {
  /** Root mean square error in fractions; absent where one wash count leaves nothing to judge by. */
  readonly error?: number;
}

/**
 * What cloth may tend to: no cloth grows to more than twice its length or shrinks to less than a
 * tenth of it, whatever a line through two doubtful points would say. Own judgement, no source.
 */
const LIMIT_RANGE = { least: -1, most: 0.9 } as const;

/**
 * Keeps the limit of a course within what cloth can do.
 *
 * @param limit fraction
 *
 * @example
 * clampLimit(4) // => 0.9
 */
export function clampLimit(limit: number): number {
  return Math.min(LIMIT_RANGE.most, Math.max(LIMIT_RANGE.least, limit));
}

/**
 * The course k(n) = k∞·(1 − rⁿ) that lies nearest to measured points: least squares, weighted by
 * specimens, with r searched in (0, 0.95) and k∞ in closed form for each r, kept within
 * `LIMIT_RANGE`. With one wash count the course passes through the point with the rate of the fabric
 * table.
 * Own model, checked against one home-measured series of repeated laundering (quilttoit.com, 2017).
 *
 * @param points at least one, wash counts distinct
 * @param usualRate share left after each wash, used with one wash count
 *
 * @example
 * fitCourse([{ washes: 1, shrink: 0.04, weight: 3 }], 0.2) // => { limit: 0.05, rate: 0.2 }
 */
export function fitCourse(points: readonly CoursePoint[], usualRate: number): FittedCourse {
  const [first, ...rest] = points;
  if (first === undefined) throw new Error('A course needs at least one point');
  if (rest.length === 0) {
    const { limit, rate } = courseThrough(first.shrink, first.washes, usualRate);
    return { limit: clampLimit(limit), rate };
  }
  const rate = searchRate(points);
  const course = { limit: bestLimit(points, rate), rate };
  const weight = points.reduce((sum, point) => sum + point.weight, 0);
  return { ...course, error: Math.sqrt(squaredError(points, course) / weight) };
}

/** The limit that fits best for a given rate: Σ w·k·b / Σ w·b² with b = 1 − rⁿ. */
function bestLimit(points: readonly CoursePoint[], rate: number): number {
  let above = 0;
  let below = 0;
  for (const { washes, shrink, weight } of points) {
    const reached = 1 - rate ** washes;
    above += weight * shrink * reached;
    below += weight * reached * reached;
  }
  // The error is a parabola in the limit, so the nearest end is the best within the range.
  return clampLimit(above / below);
}

function squaredError(points: readonly CoursePoint[], course: ShrinkCourse): number {
  let sum = 0;
  for (const { washes, shrink, weight } of points) {
    sum += weight * (shrink - shrinkAfter(course, washes)) ** 2;
  }
  return sum;
}

/** Scans the rates, then narrows round the best by golden section. */
function searchRate(points: readonly CoursePoint[]): number {
  const errorAt = (rate: number) => squaredError(points, { limit: bestLimit(points, rate), rate });
  const stepSize = 0.05;
  let best = stepSize;
  let least = errorAt(best);
  for (let rate = 2 * stepSize; rate <= 0.95; rate += stepSize) {
    const error = errorAt(rate);
    if (error < least) [best, least] = [rate, error];
  }
  return narrowDown(errorAt, Math.max(1e-6, best - stepSize), Math.min(0.95, best + stepSize));
}

/** The least of a function with one valley between two bounds, by golden section. */
function narrowDown(errorAt: (rate: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [leftError, rightError] = [errorAt(left), errorAt(right)];
  while (high - low > 1e-9) {
    if (leftError <= rightError) {
      [high, right, rightError] = [right, left, leftError];
      left = high - golden * (high - low);
      leftError = errorAt(left);
    } else {
      [low, left, leftError] = [left, right, rightError];
      right = low + golden * (high - low);
      rightError = errorAt(right);
    }
  }
  return (low + high) / 2;
}
