import * as z from 'zod/mini';
import type { YardageRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { once } from '../once.ts';
import type { Same } from '../same.ts';
import { offersSchema } from './offers-schema.ts';
import { counted, lengthOf, nameOf, shrinkSchema, unitSchema } from './wire-schemas.ts';

const pieceSchema = once(() =>
  z
    .strictObject({
      id: nameOf('Name of the piece'),
      width: lengthOf('Across the roll'),
      length: lengthOf('Along the roll'),
      count: counted('pieceCount', 'How many'),
      directional: z.exactOptional(
        z.boolean().register(z.globalRegistry, { description: 'May not be turned' }),
      ),
    })
    .register(z.globalRegistry, { description: 'Pieces of one size' }),
);

const fabricSchema = once(() =>
  z
    .strictObject({
      id: nameOf('Name of the fabric'),
      width: lengthOf('Width of the roll, selvages included'),
      selvage: z.exactOptional(lengthOf('Cut away at each edge')),
      prewash: z.exactOptional(shrinkSchema()),
      squaring: z.exactOptional(lengthOf('Cut away to square the end')),
      step: z.exactOptional(lengthOf('The step that the shop sells by')),
      lengthLeft: z.exactOptional(lengthOf('What is left on the bolt')),
      offers: z.exactOptional(offersSchema()),
      pieces: z
        .array(pieceSchema())
        .check(z.minLength(1), z.maxLength(SIZE_LIMITS.pieceKinds))
        .register(z.globalRegistry, { description: 'What is cut from it' }),
    })
    .register(z.globalRegistry, { description: 'Cloth of one roll' }),
);

/** Rolls and what is cut from them. */
export const yardageSchema = once(() =>
  z.strictObject({
    unit: z.exactOptional(unitSchema()),
    fabrics: z
      .array(fabricSchema())
      .check(z.minLength(1), z.maxLength(SIZE_LIMITS.fabrics))
      .register(z.globalRegistry, { description: 'The rolls' }),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof yardageSchema>>, YardageRequest>;
