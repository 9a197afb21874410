import type { PurchasePlan } from '../cloth/offers/lay-out.ts';
import { roundPurchase } from '../cloth/round-purchase.ts';
import type { ClothBought, ClothOfferInput, Unit } from '../contract.ts';
import { MILLIMETRES, roundTo, toMillimetres } from '../length.ts';
import { writeLength } from '../write-length.ts';
import type { FabricOrder } from './read-fabric.ts';

/** The shopping list, and the cloth that it comes to, mm². */
export interface Bought {
  readonly lines: readonly ClothBought[];
  readonly area: number;
}

/**
 * The shopping list of a plan: the length off a roll, then the packs, in the order of the offers.
 * A price is rounded half up, once for a line.
 */
export function listBought(
  plan: PurchasePlan,
  order: FabricOrder,
  { offers, unit }: { readonly offers: readonly ClothOfferInput[]; readonly unit: Unit },
): Bought {
  const lines: ClothBought[] = [];
  let area = 0;
  for (const [place, offer] of offers.entries()) {
    if (offer.kind === 'roll') {
      const steps = plan.roll && order.rollPlaces[plan.roll.at] === place ? plan.roll.steps : 0;
      if (steps === 0) continue;
      const step = toMillimetres(offer.step, unit);
      const bought = roundPurchase(steps * step, step, unit);
      area += steps * step * order.roll.width;
      lines.push({ offer: offer.id, ...bought, ...priceOf(offer, bought.amount) });
    } else {
      const count = plan.packs[order.sheetPlaces.indexOf(place)] ?? 0;
      if (count === 0) continue;
      const mm = (value: number) => toMillimetres(value, unit);
      area += count * offer.count * mm(offer.width) * mm(offer.length);
      const text = writePacks(offer, count, unit);
      lines.push({ offer: offer.id, count, unit: 'pack', text, ...priceOf(offer, count) });
    }
  }
  return { lines, area };
}

function priceOf({ price }: ClothOfferInput, amount: number): { readonly price?: number } {
  return price === undefined ? {} : { price: roundTo(price * amount, 0) };
}

function writePacks(
  offer: Extract<ClothOfferInput, { kind: 'pieces' }>,
  count: number,
  unit: Unit,
): string {
  const side = (value: number) => writeLength(toMillimetres(value, unit), unit);
  const size = `${side(offer.width)} by ${side(offer.length)}`;
  if (offer.count === 1) return `${count} ${count === 1 ? 'piece' : 'pieces'} of ${size}`;
  return `${count} ${count === 1 ? 'pack' : 'packs'} of ${offer.count} pieces of ${size}`;
}

/** Square yards or metres of an area in square millimetres. */
export function writeArea(area: number, unit: Unit): number {
  return area / (unit === 'in' ? MILLIMETRES.yd : MILLIMETRES.m) ** 2;
}
