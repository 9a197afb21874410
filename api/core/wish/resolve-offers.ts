import type { ClothOffer, ClothOfferInput } from '../contract.ts';
import type { Path } from '../outcome.ts';
import { checkIds } from './check-ids.ts';
import { keep, type Reading, readLengthField } from './reading.ts';

/**
 * Understands what a cloth is sold as. Faults beside those of lengths: `repeated-id`; `missing` for a
 * price where other offers have one, since a cheapest purchase must know them all.
 *
 * @param asked the offers, and the step of a roll that names none, in the unit of the request; with
 * `why` that step is told as an assumption of each such roll
 */
export function resolveOffers(
  reading: Reading,
  asked: {
    readonly offers: readonly ClothOffer[];
    readonly step: number;
    readonly why?: string;
  },
  path: Path,
): readonly ClothOfferInput[] {
  const { offers, ...usual } = asked;
  checkIds(reading, offers, path);
  const isPriced = offers.some((offer) => offer.price !== undefined);
  return offers.map((offer, index) => {
    const place = [...path, index];
    if (isPriced && offer.price === undefined) {
      const expected = 'a price, since another offer has one';
      reading.faults.push({ code: 'missing', path: [...place, 'price'], expected });
    }
    keep(reading, [...place, 'kind'], offer.kind);
    keep(reading, [...place, 'id'], offer.id);
    const resolved =
      offer.kind === 'roll'
        ? resolveRoll(reading, { offer, ...usual }, place)
        : resolveSheet(reading, offer, place);
    if (offer.price === undefined) return resolved;
    keep(reading, [...place, 'price'], offer.price);
    return { ...resolved, price: offer.price };
  });
}

type Offer<Kind> = Extract<ClothOffer, { kind: Kind }>;

function resolveRoll(
  reading: Reading,
  {
    offer,
    step: fallback,
    ...told
  }: { readonly offer: Offer<'roll'>; readonly step: number; readonly why?: string },
  path: Path,
): ClothOfferInput {
  const step = readLengthField(reading, {
    path: [...path, 'step'],
    given: offer.step,
    limit: 'rollStep',
    fallback,
    ...told,
  });
  const least = readLengthField(reading, {
    path: [...path, 'least'],
    given: offer.least,
    limit: 'leastSold',
    fallback: step,
  });
  return { kind: 'roll', id: offer.id, step, least };
}

function resolveSheet(reading: Reading, offer: Offer<'pieces'>, path: Path): ClothOfferInput {
  const side = (name: 'width' | 'length') =>
    readLengthField(reading, { path: [...path, name], given: offer[name], limit: 'pieceSide' });
  const width = side('width');
  const length = side('length');
  keep(reading, [...path, 'count'], offer.count);
  if (offer.most !== undefined) keep(reading, [...path, 'most'], offer.most);
  const most = offer.most === undefined ? {} : { most: offer.most };
  return { kind: 'pieces', id: offer.id, width, length, count: offer.count, ...most };
}
