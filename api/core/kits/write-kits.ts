import { cutStrips } from '../cloth/cut-strips.ts';
import { roundPurchase } from '../cloth/round-purchase.ts';
import type {
  BoltCutting,
  BoltLeft,
  KitMoney,
  KitPurchase,
  KitsInput,
  Role,
  Unit,
} from '../contract.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import { decimalsOf } from '../tables/currencies.ts';
import { buyMore } from './buy-more.ts';
import { countBolt } from './count-bolt.ts';
import type { BoltCut } from './cut-bolts.ts';
import type { KitsSpec } from './kits-spec.ts';
import { priceKit } from './price-kit.ts';

/** Writes the cutting list, one row a bolt, in the unit of the request. */
export function writeCutting(cuts: readonly BoltCut[], unit: Unit): readonly BoltCutting[] {
  return cuts.map(({ bolt, perStrip, strips, cut, used, taken }) => ({
    id: bolt.id,
    role: bolt.role,
    print: bolt.print,
    perStrip,
    strips,
    cut,
    used,
    length: fromMillimetres(taken, unit),
  }));
}

/** Writes what is left of each bolt. */
export function writeLeft(cuts: readonly BoltCut[], unit: Unit): readonly BoltLeft[] {
  return cuts.map(({ bolt, left, over }) => ({
    id: bolt.id,
    length: fromMillimetres(left, unit),
    squares: over,
  }));
}

/**
 * Writes what to buy for a number of kits: whole strips of the width of a bolt of the same print or
 * role, else of the plan's, with a straight edge of their own, rounded up to the step sold.
 */
export function writePurchases(kits: KitsSpec, wanted: number, unit: Unit): readonly KitPurchase[] {
  const lacks = buyMore(kits.stock, { kits: wanted, most: kits.mostOfOne });
  return lacks.map(({ role, print: at, squares }) => {
    const print = at === undefined ? undefined : kits.prints[at];
    const roll = findRoll(kits, role, print);
    const { cut } = kits.plan.block;
    const size = { across: cut, along: cut, pieces: squares, squaring: kits.squaring };
    const { strips, length } = cutStrips({ roll, ...size });
    return {
      role,
      ...(print !== undefined && { print }),
      squares,
      strips,
      width: fromMillimetres(roll.width, unit),
      length: fromMillimetres(length, unit),
      buy: roundPurchase(length, kits.step, unit),
    };
  });
}

function findRoll({ bolts, rolls, plan }: KitsSpec, role: Role, print: string | undefined) {
  const own = bolts.find(
    (bolt) =>
      bolt.role === role &&
      (print === undefined || bolt.print === print) &&
      countBolt(bolt, plan.block.cut).perStrip > 0,
  );
  const roll = own ?? rolls.get(role);
  if (roll === undefined) throw new Error(`The plan has no ${role}`);
  return roll;
}

/**
 * Writes the money of one kit: the cloth that all of them take, shared among them, and what is added.
 *
 * @param made kits
 * @returns nothing where no kit is made or no bolt has a cost
 */
export function writeMoney(
  { unit, bolts, costs, currency }: KitsInput,
  cuts: readonly BoltCut[],
  made: number,
): KitMoney | undefined {
  if (made === 0 || bolts.some(({ cost }) => cost === undefined)) return undefined;
  const sold = unit === 'in' ? MILLIMETRES.yd : MILLIMETRES.m;
  const cloth = cuts.reduce((sum, { taken }, at) => sum + taken * (bolts[at]?.cost ?? 0), 0);
  const { packaging, labour, overhead } = costs;
  const priced = priceKit({
    materials: cloth / sold / made,
    labour,
    packaging,
    overhead,
    ...(costs.margin !== undefined && { margin: costs.margin / 100 }),
    ...(costs.markup !== undefined && { markup: costs.markup / 100 }),
    ...(costs.price !== undefined && { price: costs.price }),
  });
  return {
    currency,
    decimals: decimalsOf(currency),
    materials: priced.materials,
    labour,
    packaging,
    overhead,
    cost: priced.cost,
    ...(priced.price !== undefined && { price: priced.price }),
    ...(priced.margin !== undefined && { marginPercent: roundTo(100 * priced.margin, 2) }),
  };
}
