import type { FabricName, Role } from '#core/contract.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import type { ShownClass, ShownWork } from '../../data/holds-work.ts';

/** What is bought of one cloth. */
interface Bought {
  readonly buy: { readonly amount: number; readonly unit: 'yd' | 'm' };
  readonly purchase?: readonly { readonly text: string }[];
  readonly lacking?: number;
}

/** Cloths of which the same is cut and bought: one row of the list. */
export interface ClothGroup {
  readonly role: Role;
  readonly fabric: FabricName;
  /** Letter and name of each print; none for a layer that is all one cloth. */
  readonly prints: readonly { readonly letter: string; readonly name: string }[];
  /** For one pupil, spare ones included. */
  readonly squares: number;
  readonly each: Bought;
  readonly all: Bought;
  /** Whether the purchase is told in words. */
  readonly isWordy: boolean;
}

/** The cloth of a plan for one pupil and for all, alike cloths in one row; prints without blocks are left out. */
export function groupCloth(plan: ShownWork, all: ShownClass): readonly ClothGroup[] {
  const groups = new Map<string, ClothGroup>();
  for (const [index, need] of plan.fabrics.entries()) {
    const whole = all.fabrics[index];
    if (whole === undefined || need.pieces === 0) continue;
    const { role, fabric, print } = need;
    const squares = need.pieces + need.spare;
    const each = pick(need);
    const key = JSON.stringify([role, fabric, squares, each, pick(whole)]);
    const own = { letter: letterOf(placeOf(plan, index)), name: print ?? '' };
    const known = groups.get(key);
    groups.set(key, {
      ...{ role, fabric, squares, each, all: pick(whole) },
      prints: [...(known?.prints ?? []), ...(print === undefined ? [] : [own])],
      isWordy: need.purchase !== undefined,
    });
  }
  return [...groups.values()];
}

function pick({ buy, purchase, lacking }: Bought): Bought {
  const { amount, unit } = buy;
  return {
    buy: { amount, unit },
    ...(purchase && { purchase: purchase.map(({ text }) => ({ text })) }),
    ...(lacking !== undefined && { lacking }),
  };
}

/** The place of a print among the prints of its layer. */
function placeOf({ fabrics }: ShownWork, index: number): number {
  const role = fabrics[index]?.role;
  return index - fabrics.findIndex((need) => need.role === role);
}
