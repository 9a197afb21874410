import * as z from 'zod/mini';
import type { YardageRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import type { Same } from '../same.ts';
import { counted, lengthOf, nameOf, shrinkSchema, unitSchema } from './wire-schemas.ts';

const pieceSchema = z
  .strictObject({
    id: nameOf('Name of the piece'),
    width: lengthOf('Across the roll'),
    length: lengthOf('Along the roll'),
    count: counted('pieceCount', 'How many'),
    directional: z.exactOptional(z.boolean().check(z.meta({ description: 'May not be turned' }))),
  })
  .check(z.meta({ description: 'Pieces of one size' }));

const price = (of: string) =>
  z.exactOptional(counted('money', `Price of ${of}, whole minor units of the currency`));

const rollOfferSchema = z
  .strictObject({
    kind: z.literal('roll').check(z.meta({ description: 'A length off the roll' })),
    id: nameOf('Name of the offer'),
    step: z.exactOptional(lengthOf("Sold in whole steps; the fabric's step unless told")),
    least: z.exactOptional(lengthOf('The least that is sold; one step unless told')),
    price: price('a yard or a metre'),
  })
  .check(z.meta({ description: 'Cloth off the roll' }));

const piecesOfferSchema = z
  .strictObject({
    kind: z.literal('pieces').check(z.meta({ description: 'Flat pieces, in packs' })),
    id: nameOf('Name of the offer'),
    width: lengthOf('Width of one piece'),
    length: lengthOf('Length of one piece'),
    count: counted('packCount', 'Pieces in one pack'),
    most: z.exactOptional(counted('packs', 'Packs to be had; as many as are wanted unless told')),
    price: price('a pack'),
  })
  .check(z.meta({ description: 'Fat quarters, pre-cut squares, remnants' }));

const fabricSchema = z
  .strictObject({
    id: nameOf('Name of the fabric'),
    width: lengthOf('Width of the roll, selvages included'),
    selvage: z.exactOptional(lengthOf('Cut away at each edge')),
    prewash: z.exactOptional(shrinkSchema),
    squaring: z.exactOptional(lengthOf('Cut away to square the end')),
    step: z.exactOptional(lengthOf('The step that the shop sells by')),
    lengthLeft: z.exactOptional(lengthOf('What is left on the bolt')),
    offers: z.exactOptional(
      z
        .array(z.union([rollOfferSchema, piecesOfferSchema]))
        .check(
          z.minLength(1),
          z.maxLength(SIZE_LIMITS.offers),
          z.meta({ description: 'What it is sold as; off the roll alone unless told' }),
        ),
    ),
    pieces: z
      .array(pieceSchema)
      .check(
        z.minLength(1),
        z.maxLength(SIZE_LIMITS.pieceKinds),
        z.meta({ description: 'What is cut from it' }),
      ),
  })
  .check(z.meta({ description: 'Cloth of one roll' }));

/** Rolls and what is cut from them. */
export const yardageSchema = z.strictObject({
  unit: z.exactOptional(unitSchema),
  fabrics: z
    .array(fabricSchema)
    .check(z.minLength(1), z.maxLength(SIZE_LIMITS.fabrics), z.meta({ description: 'The rolls' })),
});
true satisfies Same<z.infer<typeof yardageSchema>, YardageRequest>;
