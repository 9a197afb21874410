import { countNeeded } from '../block/count-whole.ts';
import type { FabricName, Purchase, Role, Unit } from '../contract.ts';
import { MILLIMETRES } from '../length.ts';
import { apportionBlocks } from './apportion-blocks.ts';
import { cutStrips, type StripPlan } from './cut-strips.ts';
import { roundPurchase } from './round-purchase.ts';
import type { Roll } from './usable-width.ts';

/** What is to be cut, and from what; lengths in millimetres. */
export interface ClothOrder {
  readonly blocks: number;
  readonly cut: number;
  readonly cloths: readonly {
    /** Place of its layer in the sandwich, from the top. */
    readonly layer: number;
    readonly role: Role;
    readonly fabric: FabricName;
    readonly print?: string;
    /** Its part of the blocks among the prints of its layer. */
    readonly weight: number;
    readonly roll: Roll;
  }[];
  /** Extra pieces, fraction. */
  readonly spare: number;
  readonly squaring: number;
  readonly step: number;
  readonly unit: Unit;
}

export interface ClothNeed extends StripPlan {
  readonly role: Role;
  readonly fabric: FabricName;
  readonly print?: string;
  readonly pieces: number;
  readonly spare: number;
  readonly buy: Purchase;
  /** Fraction of the cloth bought that is in no piece. */
  readonly waste: number;
}

/**
 * The cloth of a quilt, one row a print and layer: its pieces, strips, and length to buy.
 *
 * The prints of a layer share its blocks by `apportionBlocks`; spare pieces are rounded up for each
 * print; strips by `cutStrips`; bought by the step sold. Waste is 1 − area of the pieces (spare ones
 * included) / area bought.
 *
 * @returns rows in the order of the cloths; the pieces of each layer sum to the blocks
 */
export function buyCloth(order: ClothOrder): readonly ClothNeed[] {
  const layers = [...new Set(order.cloths.map((cloth) => cloth.layer))];
  const counts = new Map(layers.map((layer) => [layer, [...shareOut(order, layer)]]));
  return order.cloths.map((cloth) => {
    const pieces = counts.get(cloth.layer)?.shift() ?? 0;
    const spare = countNeeded(pieces * order.spare, 1);
    const plan = cutStrips({
      roll: cloth.roll,
      across: order.cut,
      along: order.cut,
      pieces: pieces + spare,
      squaring: order.squaring,
    });
    const buy = roundPurchase(plan.length, order.step, order.unit);
    const bought = buy.amount * MILLIMETRES[buy.unit] * cloth.roll.width;
    const cutOut = (pieces + spare) * order.cut ** 2;
    return {
      role: cloth.role,
      fabric: cloth.fabric,
      ...(cloth.print !== undefined && { print: cloth.print }),
      pieces,
      spare,
      ...plan,
      buy,
      waste: bought === 0 ? 0 : 1 - cutOut / bought,
    };
  });
}

/** The blocks of one layer, shared among its prints. */
function shareOut(order: ClothOrder, layer: number): readonly number[] {
  const cloths = order.cloths.filter((cloth) => cloth.layer === layer);
  return apportionBlocks(
    order.blocks,
    cloths.map((cloth) => cloth.weight),
  );
}
