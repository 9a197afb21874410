import * as z from 'zod/mini';
import type { StashPiece, StashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { planStash } from '#core/stash.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { once } from '../http/once.ts';
import type { Same } from '../http/same.ts';
import { targetSchema } from '../http/schemas/plan-schema.ts';
import * as wire from '../http/schemas/wire-schemas.ts';

const { counted, lengthOf, nameOf, ranged } = wire;

const pieceSchema = once(() =>
  z
    .strictObject({
      id: nameOf('Name of the piece'),
      role: wire.roleSchema(),
      print: z.exactOptional(nameOf('The print it shows; its own id unless told')),
      width: lengthOf('Across the roll it came from'),
      length: lengthOf('Along the roll it came from'),
      count: z.exactOptional(counted('stashCount', 'Pieces alike; 1 unless told')),
      directional: z.exactOptional(
        z.boolean().register(z.globalRegistry, { description: 'Has an up and a down' }),
      ),
      selvage: z.exactOptional(lengthOf('Cut away at each edge across')),
    })
    .register(z.globalRegistry, { description: 'Pieces on hand that are alike' }),
);
true satisfies Same<z.infer<ReturnType<typeof pieceSchema>>, StashPiece>;

const shapeSchema = once(() =>
  z
    .union([
      z.strictObject({ ratio: ranged('shapeRatio', 'Width for height') }),
      z.strictObject({ target: targetSchema() }),
    ])
    .register(z.globalRegistry, {
      description: 'How wide for its height, or the size to stop at; 0.8 unless told',
    }),
);

export const stashSchema = once(() =>
  z.strictObject({
    unit: z.exactOptional(wire.unitSchema()),
    pieces: z
      .array(pieceSchema())
      .check(z.minLength(1), z.maxLength(SIZE_LIMITS.stashPieces))
      .register(z.globalRegistry, { description: 'What is on hand' }),
    block: z.exactOptional(
      z
        .strictObject({
          cut: z.exactOptional(lengthOf('Side of a block as cut')),
          seam: z.exactOptional(lengthOf('Seam allowance')),
        })
        .register(z.globalRegistry, { description: 'One block' }),
    ),
    cuts: z.exactOptional(
      z
        .array(lengthOf('Side of a block as cut'))
        .check(z.minLength(1), z.maxLength(SIZE_LIMITS.cuts))
        .register(z.globalRegistry, {
          description: 'Cut sizes to consider when block.cut is left out',
        }),
    ),
    layers: z.exactOptional(
      z
        .array(z.omit(wire.layerSchema(), { prints: true, width: true, selvage: true }))
        .check(z.minLength(SIZE_LIMITS.layers.least), z.maxLength(SIZE_LIMITS.layers.most))
        .register(z.globalRegistry, {
          description: 'The sandwich; that of the pieces unless told',
        }),
    ),
    shape: z.exactOptional(shapeSchema()),
    touch: z.exactOptional(
      z
        .enum(['sides', 'corners'])
        .register(z.globalRegistry, { description: 'Where no print may meet its like' }),
    ),
    grain: z.exactOptional(wire.grainSchema()),
    washes: z.exactOptional(counted('washes', 'Which wash the washed size is for')),
    squaring: z.exactOptional(lengthOf('Cut away along each piece to straighten it')),
    usable: z.exactOptional(lengthOf('Least shorter side of what is worth keeping')),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof stashSchema>>, StashRequest>;

export const stash = bindEndpoint({
  path: '/v1/stash',
  summary: 'What can be made of pieces on hand: the plans that can be cut, largest first.',
  schema: stashSchema,
  resolve: resolveStash,
  mediaType: 'application/json',
  cost: ({ input }) => 20 + 10 * input.pieces.length,
  write: (understood) => JSON.stringify(planStash(understood)),
});
