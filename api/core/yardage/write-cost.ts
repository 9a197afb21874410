import type { CoverPlan } from '../cloth/offers/cheapest-roll.ts';
import type { ClothCost, Unit } from '../contract.ts';
import { roundTo } from '../length.ts';
import { type Bought, writeArea } from './list-bought.ts';
import type { FabricOrder } from './read-fabric.ts';

/**
 * What a purchase comes to, and a proven bound: in minor units, or square yards or metres where nothing
 * has a price. A bound is rounded down, and is the total itself where that is proven least.
 */
export function writeCost(
  { bound, optimal }: Pick<CoverPlan, 'bound' | 'optimal'>,
  { costs }: Pick<FabricOrder, 'costs'>,
  { bought, unit }: { readonly bought: Bought; readonly unit: Unit },
): ClothCost {
  if (costs === 'price') {
    const total = bought.lines.reduce((sum, line) => sum + (line.price ?? 0), 0);
    return { of: 'price', total, bound: optimal ? total : Math.min(total, Math.floor(bound)) };
  }
  const total = roundTo(writeArea(bought.area, unit), 4);
  const low = Math.floor(writeArea(bound * 100, unit) * 1e4) / 1e4;
  return { of: 'area', total, bound: optimal ? total : Math.min(total, low) };
}
