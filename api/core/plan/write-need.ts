import type { ClothNeed } from '../cloth/buy-cloth.ts';
import type { FabricNeed, Unit } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import type { OfferPurchase } from './buy-offers.ts';

/**
 * Writes one row of cloth in the unit of the request. What is wasted and left over is that of the
 * purchase where the layer has offers, else of the length off the roll.
 */
export function writeNeed(
  need: ClothNeed,
  purchase: OfferPurchase | undefined,
  unit: Unit,
): FabricNeed {
  const inUnit = (value: number) => fromMillimetres(value, unit);
  const { waste, spareFree, left } = purchase ?? need;
  return {
    role: need.role,
    fabric: need.fabric,
    ...(need.print !== undefined && { print: need.print }),
    pieces: need.pieces,
    spare: need.spare,
    usableWidth: inUnit(need.usableWidth),
    perStrip: need.perStrip,
    strips: need.strips,
    length: inUnit(need.length),
    buy: need.buy,
    // One size of square: no plan of whole strips is shorter, see cutStrips.
    bound: inUnit(need.length),
    waste: roundTo(100 * waste, 4),
    spareFree,
    left: left.map(({ width, length, ...alike }) => ({
      width: inUnit(width),
      length: inUnit(length),
      count: 'count' in alike ? alike.count : 1,
    })),
    ...(purchase && writePurchase(purchase)),
  };
}

/** Writes what is bought of offers, what it comes to, and what they do not give. */
export function writePurchase({
  lines,
  cost,
  lacking,
}: OfferPurchase): Pick<FabricNeed, 'purchase' | 'cost' | 'lacking'> {
  return { purchase: lines, cost, ...(lacking > 0 && { lacking }) };
}
