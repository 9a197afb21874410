import type { StashLimit } from '../contract.ts';
import type { GridSize } from './list-grids.ts';
import type { Supply } from './supply-blocks.ts';

/** A plan, or none where it has no blocks, among what it was chosen from. */
export interface Choice {
  readonly blocks: number;
  /** Every grid of this cut size that has the shape asked for, largest first. */
  readonly grids: readonly Pick<GridSize, 'blocks'>[];
  readonly supply: Pick<Supply, 'roles'>;
  /** Whether a larger plan of this cut size is offered too. */
  readonly hasLarger: boolean;
  /** Whether a size to stop at was given. */
  readonly hasTarget: boolean;
}

/**
 * What keeps a plan from being larger: each role whose cloth is not enough for the next larger grid of
 * the shape asked for; where all are, that no layout of it was found in which like prints do not touch;
 * where no larger grid is, the size to stop at or the greatest quilt. A plan that is offered beside a larger one of the same cut size is
 * there for its shape.
 *
 * @example
 * nameLimits({ blocks: 6, grids: [{ blocks: 12 }, { blocks: 6 }], supply: { roles: [{ role: 'top', blocks: 11 }, { role: 'backing', blocks: 40 }] }, hasLarger: false, hasTarget: false }) // => ['top']
 */
export function nameLimits(choice: Choice): readonly StashLimit[] {
  const { blocks, grids, supply, hasLarger, hasTarget } = choice;
  if (hasLarger) return ['shape'];
  const next = grids.filter((grid) => grid.blocks > blocks).at(-1);
  if (next === undefined) return [hasTarget ? 'target' : 'greatest'];
  const short = supply.roles.filter((role) => role.blocks < next.blocks);
  return short.length > 0 ? short.map(({ role }) => role) : ['touch'];
}
