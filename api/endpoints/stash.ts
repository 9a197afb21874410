import * as z from 'zod';
import type { StashPiece, StashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { planStash } from '#core/stash.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import type { Same } from '../http/same.ts';
import { targetSchema } from '../http/schemas/plan-schema.ts';
import * as wire from '../http/schemas/wire-schemas.ts';

const { counted, lengthOf, nameOf, ranged } = wire;

const pieceSchema = z
  .strictObject({
    id: nameOf('Name of the piece'),
    role: wire.roleSchema,
    print: nameOf('The print it shows; its own id unless told').exactOptional(),
    width: lengthOf('Across the roll it came from'),
    length: lengthOf('Along the roll it came from'),
    count: counted('stashCount', 'Pieces alike; 1 unless told').exactOptional(),
    directional: z.boolean().meta({ description: 'Has an up and a down' }).exactOptional(),
    selvage: lengthOf('Cut away at each edge across').exactOptional(),
  })
  .meta({ description: 'Pieces on hand that are alike' });
true satisfies Same<z.infer<typeof pieceSchema>, StashPiece>;

const shapeSchema = z
  .union([
    z.strictObject({ ratio: ranged('shapeRatio', 'Width for height') }),
    z.strictObject({ target: targetSchema }),
  ])
  .meta({ description: 'How wide for its height, or the size to stop at; 0.8 unless told' });

export const stashSchema = z.strictObject({
  unit: wire.unitSchema.exactOptional(),
  pieces: z
    .array(pieceSchema)
    .min(1)
    .max(SIZE_LIMITS.stashPieces)
    .meta({ description: 'What is on hand' }),
  block: z
    .strictObject({
      cut: lengthOf('Side of a block as cut').exactOptional(),
      seam: lengthOf('Seam allowance').exactOptional(),
    })
    .meta({ description: 'One block' })
    .exactOptional(),
  cuts: z
    .array(lengthOf('Side of a block as cut'))
    .min(1)
    .max(SIZE_LIMITS.cuts)
    .meta({ description: 'Cut sizes to consider when block.cut is left out' })
    .exactOptional(),
  layers: z
    .array(wire.layerSchema.omit({ prints: true, width: true, selvage: true }))
    .min(SIZE_LIMITS.layers.least)
    .max(SIZE_LIMITS.layers.most)
    .meta({ description: 'The sandwich; that of the pieces unless told' })
    .exactOptional(),
  shape: shapeSchema.exactOptional(),
  touch: z
    .enum(['sides', 'corners'])
    .meta({ description: 'Where no print may meet its like' })
    .exactOptional(),
  grain: wire.grainSchema.exactOptional(),
  washes: counted('washes', 'Which wash the washed size is for').exactOptional(),
  squaring: lengthOf('Cut away along each piece to straighten it').exactOptional(),
  usable: lengthOf('Least shorter side of what is worth keeping').exactOptional(),
});
true satisfies Same<z.infer<typeof stashSchema>, StashRequest>;

export const stash = bindEndpoint({
  path: '/v1/stash',
  summary: 'What can be made of pieces on hand: the plans that can be cut, largest first.',
  schema: stashSchema,
  resolve: resolveStash,
  mediaType: 'application/json',
  cost: ({ input }) => 20 + 10 * input.pieces.length,
  write: (understood) => JSON.stringify(planStash(understood)),
});
