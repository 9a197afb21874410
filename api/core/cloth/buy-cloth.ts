import { countNeeded } from '../block/count-whole.ts';
import type { FabricName, Purchase, Role, Unit } from '../contract.ts';
import { MILLIMETRES } from '../length.ts';
import { apportionBlocks } from './apportion-blocks.ts';
import { cutStrips, type StripPlan } from './cut-strips.ts';
import { type LeftOver, leaveOver } from './leave-over.ts';
import { amountBought, roundPurchase } from './round-purchase.ts';
import type { Roll } from './usable-width.ts';

/** What is to be cut, and from what; lengths in millimetres. */
export interface ClothOrder {
  readonly blocks: number;
  readonly cut: number;
  /** The cloths of one layer stand together. */
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
  /** Shorter side of a rectangle worth keeping. */
  readonly usable: number;
  readonly unit: Unit;
}

/** What a roll is asked for; what is left of it does not matter. */
type RollOrder = Omit<ClothOrder, 'usable'>;

/** `spareFree` and `left` are what the purchase gives beyond pieces and spare ones. */
export interface ClothNeed extends StripPlan, LeftOver {
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
 * included) / area bought, as it is after a prewash. What is left over is told of the cloth as cut:
 * without selvages, squared up, after a prewash.
 *
 * @returns rows in the order of the cloths; the pieces of each layer sum to the blocks
 */
export function buyCloth(order: ClothOrder): readonly ClothNeed[] {
  const needs = needRolls(order, needFromRoll);
  return order.cloths.map((cloth, index) => ({
    role: cloth.role,
    fabric: cloth.fabric,
    ...(cloth.print !== undefined && { print: cloth.print }),
    ...withRest(order, cloth.roll, needs[index] ?? needFromRoll(order, cloth.roll, 0)),
  }));
}

/**
 * The same cloth in two figures, for weighing many plans against each other.
 *
 * @returns pieces cut, spare ones included, and cloth bought in yards (in) or metres (cm)
 */
export function sumCloth(order: RollOrder): { readonly pieces: number; readonly bought: number } {
  let pieces = 0;
  let bought = 0;
  for (const need of needRolls(order, sumFromRoll)) {
    pieces += need.pieces;
    bought += need.bought;
  }
  return { pieces, bought };
}

/** What each cloth has to give, in the order of the cloths. */
function needRolls<Need>(
  order: RollOrder,
  reckon: (order: RollOrder, roll: Roll, pieces: number) => Need,
): readonly Need[] {
  const { cloths } = order;
  const counts = cloths.flatMap(({ layer }, index) =>
    layer === cloths[index - 1]?.layer ? [] : shareOut(order, layer),
  );
  const known = new Map<Roll, Map<number, Need>>();
  return cloths.map(({ roll }, index) => {
    const pieces = counts[index] ?? 0;
    const sameRoll = known.get(roll) ?? new Map<number, Need>();
    const need = sameRoll.get(pieces) ?? reckon(order, roll, pieces);
    known.set(roll, sameRoll.set(pieces, need));
    return need;
  });
}

/** Pieces, spare ones included, and what to buy for them in yards or metres. */
function sumFromRoll(order: RollOrder, roll: Roll, count: number) {
  const { squaring, step, unit, cut } = order;
  const pieces = count + countNeeded(count * order.spare, 1);
  const { length } = cutStrips({ roll, across: cut, along: cut, pieces, squaring });
  return { pieces, bought: amountBought(length, step, unit) };
}

type RollNeed = Omit<ClothNeed, 'role' | 'fabric' | 'print' | keyof LeftOver>;

/** What so many pieces take from one roll; prints that share roll and number share the answer. */
function needFromRoll(order: RollOrder, roll: Roll, pieces: number): RollNeed {
  const spare = countNeeded(pieces * order.spare, 1);
  const plan = cutStrips({
    roll,
    across: order.cut,
    along: order.cut,
    pieces: pieces + spare,
    squaring: order.squaring,
  });
  const buy = roundPurchase(plan.length, order.step, order.unit);
  const { length, width } = roll.prewash;
  const asSold = buy.amount * MILLIMETRES[buy.unit] * roll.width;
  const bought = asSold * (1 - length) * (1 - width);
  const cutOut = (pieces + spare) * order.cut ** 2;
  return { pieces, spare, ...plan, buy, waste: bought === 0 ? 0 : 1 - cutOut / bought };
}

function withRest(order: ClothOrder, roll: Roll, need: RollNeed): RollNeed & LeftOver {
  if (need.strips === 0) return { ...need, spareFree: 0, left: [] };
  const bought = need.buy.amount * MILLIMETRES[need.buy.unit];
  const length = bought * (1 - roll.prewash.length) - order.squaring;
  const squares = need.pieces + need.spare;
  return { ...need, ...leaveOver({ width: need.usableWidth, length }, { ...order, squares }) };
}

/** The blocks of one layer, shared among its prints. */
function shareOut(order: Pick<ClothOrder, 'blocks' | 'cloths'>, layer: number): readonly number[] {
  const weights = order.cloths.flatMap((cloth) => (cloth.layer === layer ? [cloth.weight] : []));
  return weights.length === 1 ? [order.blocks] : apportionBlocks(order.blocks, weights);
}
