import type { PlanChoice } from '../block/choose-plan.ts';
import { buyCloth } from '../cloth/buy-cloth.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { CounterNeed } from './counter-need.ts';

/**
 * What to buy for a plan, one row a print and layer, in the order in which the plan lists its cloth; each row holds all
 * that is needed to ask for it off a bolt of another width.
 *
 * @param chosen block and grid, by `choosePlan`
 */
export function listNeeds(
  spec: PlanSpec,
  { grid, cut }: Pick<PlanChoice['chosen'], 'grid' | 'cut'>,
): readonly CounterNeed[] {
  const { squaring, step, unit } = spec;
  const rows = buyCloth({ ...spec, blocks: grid.columns * grid.rows, cut });
  return spec.cloths.map(({ roll }, at) => {
    const { role, fabric, print, pieces = 0, spare = 0 } = rows[at] ?? {};
    if (role === undefined || fabric === undefined) throw new Error('A cloth without its row');
    const cloth = { role, fabric, ...(print !== undefined && { print }) };
    return { cloth, cut, squares: pieces + spare, spare, roll, squaring, step, unit };
  });
}
