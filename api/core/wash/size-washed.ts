import type { Extent } from '../block/size-quilt.ts';

/**
 * A size after washing: sewn·(1 − k) each way.
 *
 * @param sewn mm
 * @param shrink fractions, below 1
 * @returns mm
 *
 * @example
 * washedSize({ width: 1000, height: 2000 }, { width: 0.02, height: 0.05 }) // => { width: 980, height: 1900 }
 */
export function washedSize(sewn: Extent, shrink: Extent): Extent {
  return {
    width: sewn.width * (1 - shrink.width),
    height: sewn.height * (1 - shrink.height),
  };
}

/**
 * The size to sew for a wanted size after washing: wanted / (1 − k). Undoes `washedSize`.
 *
 * @example
 * sewFor({ width: 980, height: 1900 }, { width: 0.02, height: 0.05 }) // => { width: 1000, height: 2000 }
 */
export function sewFor(wanted: Extent, shrink: Extent): Extent {
  return {
    width: wanted.width / (1 - shrink.width),
    height: wanted.height / (1 - shrink.height),
  };
}
