/**
 * Thread per length sewn of a lockstitch (type 301), needle and bobbin together: 2·(1 + t/λ).
 *
 * The published form is C = 2 + 2·T·S, with T the thickness and S the stitches in one unit of
 * length. It draws the thread as a rectangle, which is an upper model: measured use lies below,
 * so say "at most about", or put a ratio measured by unpicking in its place.
 * Half of it comes from the bobbin.
 *
 * @param thickness of all that lies under the foot, mm
 * @param stitchLength mm, above 0
 * @returns length of thread per length of seam, 2 or more
 *
 * @example
 * threadRatio(1, 2.5) // => 2.8
 */
export function threadRatio(thickness: number, stitchLength: number): number {
  return 2 * (1 + thickness / stitchLength);
}
