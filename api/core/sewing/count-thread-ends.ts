import type { Chains } from './count-chains.ts';

/** How often thread is spent beside the seams themselves. */
export interface ThreadEnds {
  /** Short lengths between two chained blocks. */
  readonly links: number;
  /** Thread cut off where a run of stitching starts or ends. */
  readonly tails: number;
}

/**
 * Links and tails of runs of stitching: a run of k seams has k − 1 links and two tails. Counting.
 *
 * @example
 * countThreadEnds([{ chains: 2, seams: 3 }, { chains: 1, seams: 1 }]) // => { links: 4, tails: 6 }
 */
export function countThreadEnds(runs: readonly Pick<Chains, 'chains' | 'seams'>[]): ThreadEnds {
  return {
    links: runs.reduce((sum, { chains, seams }) => sum + chains * (seams - 1), 0),
    tails: runs.reduce((sum, { chains }) => sum + 2 * chains, 0),
  };
}
