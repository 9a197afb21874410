import { countNeeded } from '../block/count-whole.ts';
import type { Block } from '../block/size-block.ts';
import type { Grid } from '../block/size-quilt.ts';
import type { SewingStep } from '../contract.ts';
import { type Chains, countChains } from './count-chains.ts';
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

/** Runs of stitching with the thread of each of them, needle and bobbin together, mm. */
export interface ChainThread extends Chains {
  readonly thread: number;
  /** What all of them together have in their seams, links and tails not counted, mm. */
  readonly inSeams: number;
}

export interface ThreadPlan {
  /** As they are sewn, in the order of the work; their thread sums to `used`. */
  readonly chains: readonly ChainThread[];
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
  const { borderPasses } = stitching;
  const seams = measureSeams(quilt.grid, quilt.block, borderPasses);
  const seamLength = seams.quilting + seams.joins + seams.rows + seams.border;
  const stages = threadStages(quilt, seams, stitching);
  const inSeams = stages.quilting + stages.joins + stages.rows + stages.border;
  const spend = ({ links, tails }: ThreadEnds) =>
    2 * (links * stitching.link + tails * stitching.tail);
  const runsOf = (chained: boolean) => countChains(quilt.grid, { chained, borderPasses });
  const chained = inSeams + spend(countThreadEnds(runsOf(true)));
  const singly = inSeams + spend(countThreadEnds(runsOf(false)));
  const used = stitching.chained ? chained : singly;
  return {
    chains: runsOf(stitching.chained).map((run) => {
      const own = threadOfStep(run.step, stages);
      const ends = countThreadEnds([{ chains: 1, seams: run.seams }]);
      return { ...run, inSeams: own, thread: own / run.chains + spend(ends) };
    }),
    seams,
    seamLength,
    ratio: inSeams / seamLength,
    chained,
    singly,
    used,
    bobbins: countNeeded(used / 2, stitching.bobbin),
  };
}

/** Thread in the seams of each stage, links and tails not counted. */
function threadStages(
  quilt: { readonly grid: Grid; readonly block: Block; readonly thickness: number },
  seams: SeamLengths,
  { length, ratio }: Stitching,
): SeamLengths {
  const ratioOf = (sandwiches: number) =>
    ratio ?? threadRatio(sandwiches * quilt.thickness, length);
  const crossings = crossingLength(quilt.grid, quilt.block);
  return {
    quilting: seams.quilting * ratioOf(1),
    joins: seams.joins * ratioOf(2),
    rows: (seams.rows - crossings) * ratioOf(2) + crossings * ratioOf(4),
    border: seams.border * ratioOf(1),
  };
}

function threadOfStep(step: SewingStep, stages: SeamLengths): number {
  if (step === 'join') return stages.joins;
  if (step === 'join-rows') return stages.rows;
  return step === 'border' ? stages.border : stages.quilting / 2;
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
