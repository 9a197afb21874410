import * as z from 'zod';
import type { YardageRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import type { Same } from '../http/same.ts';
import {
  counted,
  lengthOf,
  nameOf,
  shrinkSchema,
  unitSchema,
} from '../http/schemas/wire-schemas.ts';

const pieceSchema = z
  .strictObject({
    id: nameOf('Name of the piece'),
    width: lengthOf('Across the roll'),
    length: lengthOf('Along the roll'),
    count: counted('pieceCount', 'How many'),
    directional: z.boolean().meta({ description: 'May not be turned' }).exactOptional(),
  })
  .meta({ description: 'Pieces of one size' });

const price = (of: string) =>
  counted('money', `Price of ${of}, whole minor units of the currency`).exactOptional();

const rollOfferSchema = z
  .strictObject({
    kind: z.literal('roll').meta({ description: 'A length off the roll' }),
    id: nameOf('Name of the offer'),
    step: lengthOf("Sold in whole steps; the fabric's step unless told").exactOptional(),
    least: lengthOf('The least that is sold; one step unless told').exactOptional(),
    price: price('a yard or a metre'),
  })
  .meta({ description: 'Cloth off the roll' });

const piecesOfferSchema = z
  .strictObject({
    kind: z.literal('pieces').meta({ description: 'Flat pieces, in packs' }),
    id: nameOf('Name of the offer'),
    width: lengthOf('Width of one piece'),
    length: lengthOf('Length of one piece'),
    count: counted('packCount', 'Pieces in one pack'),
    most: counted('packs', 'Packs to be had; as many as are wanted unless told').exactOptional(),
    price: price('a pack'),
  })
  .meta({ description: 'Fat quarters, pre-cut squares, remnants' });

const fabricSchema = z
  .strictObject({
    id: nameOf('Name of the fabric'),
    width: lengthOf('Width of the roll, selvages included'),
    selvage: lengthOf('Cut away at each edge').exactOptional(),
    prewash: shrinkSchema.exactOptional(),
    squaring: lengthOf('Cut away to square the end').exactOptional(),
    step: lengthOf('The step that the shop sells by').exactOptional(),
    lengthLeft: lengthOf('What is left on the bolt').exactOptional(),
    offers: z
      .array(z.union([rollOfferSchema, piecesOfferSchema]))
      .min(1)
      .max(SIZE_LIMITS.offers)
      .meta({ description: 'What it is sold as; off the roll alone unless told' })
      .exactOptional(),
    pieces: z
      .array(pieceSchema)
      .min(1)
      .max(SIZE_LIMITS.pieceKinds)
      .meta({ description: 'What is cut from it' }),
  })
  .meta({ description: 'Cloth of one roll' });

export const yardageSchema = z.strictObject({
  unit: unitSchema.exactOptional(),
  fabrics: z.array(fabricSchema).min(1).max(SIZE_LIMITS.fabrics).meta({ description: 'The rolls' }),
});
true satisfies Same<z.infer<typeof yardageSchema>, YardageRequest>;

export const yardage = bindEndpoint({
  path: '/v1/yardage',
  summary:
    'The least cloth to buy for pieces cut in strips, off a roll or from what a shop offers.',
  schema: yardageSchema,
  resolve: resolveYardage,
  mediaType: 'application/json',
  // Kinds of piece are tried together, so they cost more than one after the other.
  cost: ({ input }) =>
    input.fabrics.reduce((sum, { pieces }) => sum + 2 + pieces.length ** 2 / 3, 0),
  write: (understood) => JSON.stringify(planYardage(understood)),
});
