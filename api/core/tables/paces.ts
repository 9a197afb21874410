import type { Pace } from '../contract.ts';
import { SOURCES } from '../sources.ts';

/** One pace with what it means, for documents and the page. Minutes of work. */
export interface PaceRow {
  readonly minutes: number;
  readonly of: string;
  readonly source: string;
}

/** How long a practised hobby maker takes: common practice, no source; replace with your own. */
export const PACES: Readonly<Record<keyof Pace, PaceRow>> = {
  cutPiece: row(0.4, 'cutting one piece with a rotary cutter, strips first'),
  stackBlock: row(0.3, 'stacking the layers of one block'),
  sewMetre: row(0.8, 'a metre of seam under the foot'),
  handleSeam: row(0.3, 'placing and turning for one seam of one block'),
  snip: row(0.025, 'one snip'),
  layBlock: row(0.5, 'laying out one block on the floor'),
  trimBlock: row(0.3, 'trimming the loose threads of one block'),
};

function row(minutes: number, of: string): PaceRow {
  return { minutes, of, source: SOURCES.practice };
}
