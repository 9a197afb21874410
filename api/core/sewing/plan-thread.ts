import { countNeeded } from '../block/count-whole.ts';
import type { Block } from '../block/size-block.ts';
import type { Grid } from '../block/size-quilt.ts';
import { countThreadEnds, type ThreadEnds } from './count-thread-ends.ts';
import { measureSeams, type SeamLengths } from './measure-seams.ts';
import { threadRatio } from './thread-ratio.ts';

/** How the quilt is stitched; lengths in millimetres. */
export interface Stitching {
  readonly length: number;
  readonly tail: number;
  readonly link: number;
  readonly chained: boolean;
  readonly borderPasses: number;
  /** Thread on one bobbin. */
  readonly bobbin: number;
  /** Measured thread per length sewn, in place of the model. */
  readonly ratio?: number;
}

export interface ThreadPlan {
  readonly seams: SeamLengths;
  readonly seamLength: number;
  /** Thread in the seams per length of seam. */
  readonly ratio: number;
  readonly chained: number;
  readonly singly: number;
  readonly used: number;
  readonly bobbins: number;
}

/**
 * Thread for a whole quilt, at most about.
 *
 * Under the foot lies one sandwich when quilting and round the border, two in joins and rows, and
 * four where a row seam crosses a join: there, over the width of both allowances (2s), the ratio is
 * that of four. Each link and tail is spent twice, by needle and bobbin; half of all thread comes
 * from the bobbin. Ratios from `threadRatio`.
 *
 * @param thickness of one sandwich, mm
 * @returns mm of thread and seam; `bobbins` whole
 */
export function planThread(
  quilt: { readonly grid: Grid; readonly block: Block; readonly thickness: number },
  stitching: Stitching,
): ThreadPlan {
  const seams = measureSeams(quilt.grid, quilt.block, stitching.borderPasses);
  const seamLength = seams.quilting + seams.joins + seams.rows + seams.border;
  const inSeams =
    stitching.ratio === undefined
      ? sumThread(quilt, seams, stitching.length)
      : seamLength * stitching.ratio;
  const ends = countThreadEnds(quilt.grid, stitching.borderPasses);
  const spent = ({ links, tails }: ThreadEnds) =>
    inSeams + 2 * (links * stitching.link + tails * stitching.tail);
  const chained = spent(ends.chained);
  const singly = spent(ends.singly);
  const used = stitching.chained ? chained : singly;
  return {
    seams,
    seamLength,
    ratio: inSeams / seamLength,
    chained,
    singly,
    used,
    bobbins: countNeeded(used / 2, stitching.bobbin),
  };
}

function sumThread(
  quilt: { readonly grid: Grid; readonly block: Block; readonly thickness: number },
  seams: SeamLengths,
  stitchLength: number,
): number {
  const ratioOf = (sandwiches: number) => threadRatio(sandwiches * quilt.thickness, stitchLength);
  const crossings = crossingLength(quilt.grid, quilt.block);
  return (
    (seams.quilting + seams.border) * ratioOf(1) +
    (seams.joins + seams.rows - crossings) * ratioOf(2) +
    crossings * ratioOf(4)
  );
}

/**
 * Length of row seam that runs over the allowances of the joins: (m − 1)·(n − 1)·2s.
 *
 * @example
 * crossingLength({ columns: 3, rows: 2 }, { seam: 10 }) // => 40
 */
export function crossingLength(grid: Grid, block: Pick<Block, 'seam'>): number {
  return (grid.rows - 1) * (grid.columns - 1) * 2 * block.seam;
}
