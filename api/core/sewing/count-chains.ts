import type { Grid } from '../block/size-quilt.ts';
import type { SewingStep } from '../contract.ts';

/** Runs of stitching of one step, all alike: each goes from one cut of the thread to the next. */
export interface Chains {
  readonly step: SewingStep;
  readonly chains: number;
  /** Seams in each of them. */
  readonly seams: number;
}

/**
 * The runs of stitching of a quilt by step, in the order of the work.
 *
 * Chained: all blocks along one diagonal in a chain, then all along the other; the joins of a row in a
 * chain. The long seams between rows and each round of the border are runs of one, and so is every seam
 * where nothing is chained. Counting, from the way the trade chains its pieces (common practice, no source).
 *
 * @returns only steps in which something is sewn
 *
 * @example
 * countChains({ columns: 3, rows: 2 }, { chained: true, borderPasses: 2 })[2] // => { step: 'join', chains: 2, seams: 2 }
 * countChains({ columns: 3, rows: 2 }, { chained: false, borderPasses: 2 })[2] // => { step: 'join', chains: 4, seams: 1 }
 */
export function countChains(
  { columns, rows }: Grid,
  { chained, borderPasses }: { readonly chained: boolean; readonly borderPasses: number },
): readonly Chains[] {
  const run = (step: SewingStep, chains: number, seams: number): Chains =>
    chained ? { step, chains, seams } : { step, chains: chains * seams, seams: 1 };
  return [
    run('quilt-first', 1, columns * rows),
    run('quilt-second', 1, columns * rows),
    run('join', rows, columns - 1),
    run('join-rows', rows - 1, 1),
    run('border', borderPasses, 1),
  ].filter(({ chains, seams }) => chains * seams > 0);
}
