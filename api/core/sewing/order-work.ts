import type { Step } from '../contract.ts';
import { orderBlocks } from './order-blocks.ts';
import { orderFinish } from './order-finish.ts';
import { orderJoins } from './order-joins.ts';
import { prepareWork } from './prepare-work.ts';
import type { WorkFacts } from './work-facts.ts';

/**
 * The order of work, step by step: prewash or test swatch, cut, stack, quilt both ways, snip, lay
 * out, join, border, wash. Common practice, no source, with the figures of this quilt.
 *
 * @returns steps whose minutes sum to `time.total`
 */
export function orderWork(facts: WorkFacts): readonly Step[] {
  return [
    ...prepareWork(facts),
    ...orderBlocks(facts),
    ...orderJoins(facts),
    ...orderFinish(facts),
  ];
}
