import type { Grid } from '../block/size-quilt.ts';
import type { Pace, TimeAnswer } from '../contract.ts';
import type { SeamLengths } from './measure-seams.ts';

/** What there is to do; seam lengths in millimetres. */
export interface Work {
  readonly grid: Grid;
  /** Pieces cut, spare ones included. */
  readonly pieces: number;
  readonly seams: SeamLengths;
  readonly snips: number;
  readonly borderPasses: number;
}

/**
 * Minutes of work by stage: counts times paces (common practice, no source; the paces are the
 * caller's to replace). A lone block is not laid out. Machine time of washing and drying is not work and not counted.
 *
 * @param pace minutes for one of each
 * @returns minutes; `total` is their sum
 */
export function timeWork(work: Work, pace: Pace): TimeAnswer {
  const { columns, rows } = work.grid;
  const blocks = columns * rows;
  const sew = (length: number) => (length / 1000) * pace.sewMetre;
  const stages = {
    cut: work.pieces * pace.cutPiece,
    stack: blocks * pace.stackBlock,
    quilt: sew(work.seams.quilting) + 2 * blocks * pace.handleSeam,
    snip: work.snips * pace.snip,
    layout: blocks > 1 ? blocks * pace.layBlock : 0,
    joins: sew(work.seams.joins) + rows * (columns - 1) * pace.handleSeam,
    rows: sew(work.seams.rows) + (rows - 1) * columns * pace.handleSeam,
    border: sew(work.seams.border) + 4 * work.borderPasses * pace.handleSeam,
    trim: blocks * pace.trimBlock,
  };
  const total = Object.values(stages).reduce((sum, minutes) => sum + minutes, 0);
  return { ...stages, total };
}
