import { tidy } from '../length.ts';

/** What one kit costs, in minor units of a currency; margin and markup as fractions. */
export interface KitCost {
  /** Not rounded. */
  readonly materials: number;
  /** Whole, like the other sums that were given. */
  readonly labour: number;
  readonly packaging: number;
  readonly overhead: number;
  /** Share of the price that is not cost, below 1. */
  readonly margin?: number;
  /** Share of the cost that is added to it. */
  readonly markup?: number;
  readonly price?: number;
}

/** In whole minor units. */
export interface KitPrice {
  readonly materials: number;
  readonly cost: number;
  readonly price?: number;
  /** Share of the price that is not cost, from the rounded figures. */
  readonly margin?: number;
}

/**
 * What a kit costs and sells for: cost / (1 − margin), or cost·(1 + markup), or the price given.
 * Each figure is rounded once, half up, from figures not rounded; since the other sums are whole,
 * the rounded materials and they add up to the rounded cost.
 *
 * @example
 * priceKit({ materials: 2450.5, labour: 500, packaging: 50, overhead: 0, margin: 0.4 }) // => { materials: 2451, cost: 3001, price: 5001, margin: 0.3999200159968006 }
 * priceKit({ materials: 100, labour: 0, packaging: 0, overhead: 0, markup: 0.5 }) // => { materials: 100, cost: 100, price: 150, margin: 0.33333333333333337 }
 */
export function priceKit(kit: KitCost): KitPrice {
  const cost = kit.materials + kit.labour + kit.packaging + kit.overhead;
  const price = findPrice(kit, cost);
  const figures = { materials: roundHalfUp(kit.materials), cost: roundHalfUp(cost) };
  if (price === undefined) return figures;
  const rounded = roundHalfUp(price);
  return {
    ...figures,
    price: rounded,
    ...(rounded > 0 && { margin: 1 - figures.cost / rounded }),
  };
}

function findPrice({ margin, markup, price }: KitCost, cost: number): number | undefined {
  if (margin !== undefined) return cost / (1 - margin);
  return markup === undefined ? price : cost * (1 + markup);
}

/**
 * Rounds an amount that is not negative to whole minor units, half up. The last bits of a product are
 * dropped before, so that 1.005 · 100 is a half.
 *
 * @example
 * roundHalfUp(1.005 * 100) // => 101
 * roundHalfUp(2.4999) // => 2
 */
export function roundHalfUp(amount: number): number {
  return Math.floor(tidy(amount) + 0.5);
}
