import * as z from 'zod/mini';
import type { ClothOffer } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { once } from '../once.ts';
import type { Same } from '../same.ts';
import { counted, lengthOf, nameOf } from './wire-schemas.ts';

const price = (of: string) =>
  z.exactOptional(counted('money', `Price of ${of}, whole minor units of the currency`));

const rollOfferSchema = once(() =>
  z
    .strictObject({
      kind: z.literal('roll').register(z.globalRegistry, { description: 'A length off the roll' }),
      id: nameOf('Name of the offer'),
      step: z.exactOptional(
        lengthOf('Sold in whole steps; the usual step of the cloth unless told'),
      ),
      least: z.exactOptional(lengthOf('The least that is sold; one step unless told')),
      price: price('a yard or a metre'),
    })
    .register(z.globalRegistry, { description: 'Cloth off the roll' }),
);

const piecesOfferSchema = once(() =>
  z
    .strictObject({
      kind: z
        .literal('pieces')
        .register(z.globalRegistry, { description: 'Flat pieces, in packs' }),
      id: nameOf('Name of the offer'),
      width: lengthOf('Width of one piece'),
      length: lengthOf('Length of one piece'),
      count: counted('packCount', 'Pieces in one pack'),
      most: z.exactOptional(counted('packs', 'Packs to be had; as many as are wanted unless told')),
      price: price('a pack'),
    })
    .register(z.globalRegistry, { description: 'Fat quarters, pre-cut squares, remnants' }),
);

const offerSchema = once(() => z.union([rollOfferSchema(), piecesOfferSchema()]));
true satisfies Same<z.infer<ReturnType<typeof offerSchema>>, ClothOffer>;

/** What a cloth is sold as. */
export const offersSchema = once(() =>
  z
    .array(offerSchema())
    .check(z.minLength(1), z.maxLength(SIZE_LIMITS.offers))
    .register(z.globalRegistry, {
      description: 'What it is sold as; off the roll alone unless told',
    }),
);
