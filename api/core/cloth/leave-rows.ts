import { countFitting } from '../block/count-whole.ts';

/** A rectangle of cloth, mm. */
export interface Rectangle {
  /** Across. */
  readonly width: number;
  readonly length: number;
}

/**
 * What is left of a cloth when squares are cut from it in rows across, one after the other from the
 * start of its length: the end that no row reaches, the edge beside the full rows, and the rest of the
 * last row where that is not full.
 *
 * @param order side of a square in mm, less than the width; squares, no more than the cloth gives
 * @returns three rectangles at most, some of which may have no width or no length
 *
 * @example
 * leaveRows({ width: 500, length: 400 }, { cut: 150, squares: 5 }) // => [{ width: 500, length: 100 }, { width: 50, length: 150 }, { width: 200, length: 150 }]
 * leaveRows({ width: 500, length: 400 }, { cut: 150, squares: 0 }) // => [{ width: 500, length: 400 }]
 */
export function leaveRows(
  { width, length }: Rectangle,
  { cut, squares }: { readonly cut: number; readonly squares: number },
): readonly Rectangle[] {
  const across = countFitting(width, cut);
  if (squares === 0 || across === 0) return [{ width, length }];
  const rows = Math.ceil(squares / across);
  const last = squares - (rows - 1) * across;
  const full = last === across ? rows : rows - 1;
  return [
    { width, length: length - rows * cut },
    { width: width - across * cut, length: full * cut },
    ...(full < rows ? [{ width: width - last * cut, length: cut }] : []),
  ];
}
