import { countNeeded } from '../block/count-whole.ts';
import type { CoverOrder, RollOffer, SheetOffer } from '../cloth/offers/offer.ts';
import { type Roll, usableWidth } from '../cloth/usable-width.ts';
import type { ClothOfferInput, Unit, YardageInput } from '../contract.ts';
import { MILLIMETRES, toMillimetres } from '../length.ts';

export type FabricInput = YardageInput['fabrics'][number];

/** A fabric in millimetres and fractions. */
export interface FabricOrder extends CoverOrder {
  readonly roll: Roll;
  readonly squaring: number;
  readonly lengthLeft?: number;
  /** Places of the rolls and of the sheets in the list of offers. */
  readonly rollPlaces: readonly number[];
  readonly sheetPlaces: readonly number[];
  readonly costs: 'price' | 'area';
}

/**
 * The offers of a fabric: its own, or a roll alone.
 */
export function listOffers(fabric: FabricInput): readonly ClothOfferInput[] {
  return fabric.offers ?? [{ kind: 'roll', id: 'roll', step: fabric.step, least: fabric.step }];
}

/**
 * Turns what was understood of a fabric into what is to be cut and bought.
 *
 * A prewash takes its part of rolls and flat pieces alike; selvages and squaring-up are taken off rolls
 * alone. Offers cost their price (a roll's for each step), or where there is none their area in square
 * centimetres.
 */
export function readFabric(fabric: FabricInput, unit: Unit): FabricOrder {
  const mm = (value: number) => toMillimetres(value, unit);
  const prewash = { length: fabric.prewash.length / 100, width: fabric.prewash.width / 100 };
  const roll = { width: mm(fabric.width), selvage: mm(fabric.selvage), prewash };
  const squaring = mm(fabric.squaring);
  return {
    ...readOffers(listOffers(fabric), { roll, squaring, unit }),
    ...(fabric.lengthLeft !== undefined && { lengthLeft: mm(fabric.lengthLeft) }),
    kinds: fabric.pieces.map((piece) => ({
      across: mm(piece.width),
      along: mm(piece.length),
      count: piece.count,
      canTurn: !piece.directional,
    })),
  };
}

/** The roll that a cloth comes off, in millimetres, and the unit that its offers are told in. */
export interface OfferedRoll {
  readonly roll: Roll;
  readonly squaring: number;
  readonly unit: Unit;
}

/**
 * Turns what a cloth is sold as into what can be bought, as `readFabric` does.
 */
export function readOffers(
  offers: readonly ClothOfferInput[],
  { roll, squaring, unit }: OfferedRoll,
): Omit<FabricOrder, 'kinds' | 'lengthLeft'> {
  const places = (kind: ClothOfferInput['kind']) =>
    offers.flatMap((offer, at) => (offer.kind === kind ? [at] : []));
  const rolls = offers.flatMap((offer): RollOffer[] =>
    offer.kind === 'roll' ? [readRoll(offer, { unit, roll, squaring })] : [],
  );
  const sheets = offers.flatMap((offer): SheetOffer[] =>
    offer.kind === 'pieces' ? [readSheet(offer, unit, roll.prewash)] : [],
  );
  return {
    roll,
    squaring,
    usable: usableWidth(roll),
    rolls,
    sheets,
    rollPlaces: places('roll'),
    sheetPlaces: places('pieces'),
    costs: offers.some((offer) => offer.price !== undefined) ? 'price' : 'area',
  };
}

type Offer<Kind> = Extract<ClothOfferInput, { kind: Kind }>;

function readRoll(offer: Offer<'roll'>, { unit, roll, squaring }: OfferedRoll): RollOffer {
  const step = toMillimetres(offer.step, unit);
  const least = toMillimetres(offer.least, unit);
  const sold = unit === 'in' ? MILLIMETRES.yd : MILLIMETRES.m;
  return {
    room: step * (1 - roll.prewash.length),
    squaring,
    least: Math.max(1, countNeeded(least, step)),
    cost: offer.price === undefined ? (step * roll.width) / 100 : (offer.price * step) / sold,
  };
}

function readSheet(offer: Offer<'pieces'>, unit: Unit, prewash: Roll['prewash']): SheetOffer {
  const width = toMillimetres(offer.width, unit);
  const length = toMillimetres(offer.length, unit);
  return {
    width: width * (1 - prewash.width),
    length: length * (1 - prewash.length),
    count: offer.count,
    ...(offer.most !== undefined && { most: offer.most }),
    cost: offer.price ?? (width * length * offer.count) / 100,
  };
}
