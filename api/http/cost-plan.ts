import type { PlanInput } from '#core/contract.ts';

/** Blocks of a quilt whose grid is not said. */
const USUAL_BLOCKS = 200;

/**
 * What a plan costs, in points: a little for any, more for each cut size that every cloth is reckoned
 * for, for each block that a print is found for, for each swatch, and for each print that is bought of
 * offers, which are tried together. Measured with `npm run bench`.
 */
export function costPlan({ input }: { readonly input: PlanInput }): number {
  const { target, block, cuts, layers, swatches, pupils } = input;
  const cloths = layers.reduce((sum, { prints }) => sum + prints.length, 0);
  const sizes = block.cut === undefined ? cuts.length : 1;
  const blocks = 'columns' in target ? target.columns * target.rows : USUAL_BLOCKS;
  const bought = layers.reduce(
    (sum, { prints, offers = [] }) => sum + (prints.length * offers.length ** 2) / 2.5,
    0,
  );
  // A class buys all of it once more.
  const purchases = pupils === undefined ? 1 : 2;
  return 4 + (sizes * cloths) / 40 + blocks / 50 + swatches.length / 4 + purchases * bought;
}
