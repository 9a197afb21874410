/** How a cloth shrinks over repeated washing; rates are fractions. */
export interface ShrinkCourse {
  /** Shrink that repeated washing tends to. */
  readonly limit: number;
  /** Share of what is left that stays after each wash, 0 to below 1. */
  readonly rate: number;
}

/**
 * The shrink after n washes: k(n) = k∞·(1 − rⁿ).
 *
 * Own model, in line with published accounts: most of the shrink comes in the first wash and
 * successive washings approach a limit (Collins 1939, abstract).
 *
 * @param course limit as a fraction
 * @param washes whole, 0 or more
 * @returns fraction of the unwashed length
 *
 * @example
 * shrinkAfter({ limit: 0.08, rate: 0.5 }, 2) // => 0.06
 */
export function shrinkAfter(course: ShrinkCourse, washes: number): number {
  return course.limit * (1 - course.rate ** washes);
}

/**
 * The course that passes through one measured shrink.
 *
 * @param shrink fraction measured after `washes`
 * @param washes whole, 1 or more
 * @param rate share left after each wash
 *
 * @example
 * courseThrough(0.06, 2, 0.5) // => { limit: 0.08, rate: 0.5 }
 */
export function courseThrough(shrink: number, washes: number, rate: number): ShrinkCourse {
  return { limit: shrink / (1 - rate ** washes), rate };
}

/**
 * What is left to shrink after a prewash of q washes: (k(q+n) − k(q)) / (1 − k(q)),
 * as a fraction of the prewashed length.
 *
 * @example
 * shrinkLeft({ limit: 0.08, rate: 0.5 }, 0, 2) // => 0.06
 */
export function shrinkLeft(course: ShrinkCourse, prewashes: number, washes: number): number {
  const before = shrinkAfter(course, prewashes);
  return (shrinkAfter(course, prewashes + washes) - before) / (1 - before);
}
