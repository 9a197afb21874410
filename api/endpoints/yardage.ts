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

/** Kinds of piece that one fabric may have so far; the format has room for more. */
const PIECE_KINDS = 1;

const pieceSchema = z
  .strictObject({
    id: nameOf('Name of the piece'),
    width: lengthOf('Across the roll'),
    length: lengthOf('Along the roll'),
    count: counted('pieceCount', 'How many'),
    directional: z.boolean().meta({ description: 'May not be turned' }).exactOptional(),
  })
  .meta({ description: 'Pieces of one size' });

const fabricSchema = z
  .strictObject({
    id: nameOf('Name of the fabric'),
    width: lengthOf('Width of the roll, selvages included'),
    selvage: lengthOf('Cut away at each edge').exactOptional(),
    prewash: shrinkSchema.exactOptional(),
    squaring: lengthOf('Cut away to square the end').exactOptional(),
    step: lengthOf('The step that the shop sells by').exactOptional(),
    lengthLeft: lengthOf('What is left on the bolt').exactOptional(),
    pieces: z
      .array(pieceSchema)
      .min(1)
      .max(PIECE_KINDS)
      .meta({ description: 'What is cut from it: pieces of one size' }),
  })
  .meta({ description: 'Cloth of one roll' });

export const yardageSchema = z.strictObject({
  unit: unitSchema.exactOptional(),
  fabrics: z.array(fabricSchema).min(1).max(SIZE_LIMITS.fabrics).meta({ description: 'The rolls' }),
});
true satisfies Same<z.infer<typeof yardageSchema>, YardageRequest>;

export const yardage = bindEndpoint({
  path: '/v1/yardage',
  summary: 'How much cloth to buy for pieces cut in strips across the roll.',
  schema: yardageSchema,
  resolve: resolveYardage,
  mediaType: 'application/json',
  write: (understood) => JSON.stringify(planYardage(understood)),
});
