import * as z from 'zod/mini';
import type { WashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { once } from '../http/once.ts';
import type { Same } from '../http/same.ts';
import {
  counted,
  cutsSchema,
  grainSchema,
  layersSchema,
  lengthOf,
  sidesOf,
  swatchesSchema,
  unitSchema,
} from '../http/schemas/wire-schemas.ts';

export const washSchema = once(() =>
  z.strictObject({
    unit: z.exactOptional(unitSchema()),
    swatches: z.exactOptional(swatchesSchema()),
    layers: z.exactOptional(layersSchema()),
    grain: z.exactOptional(grainSchema()),
    sewn: z.exactOptional(sidesOf('Size before washing')),
    wanted: z.exactOptional(sidesOf('Size wished for after washing')),
    block: z.exactOptional(
      z
        .strictObject({
          cut: z.exactOptional(lengthOf('Side of a block as cut')),
          seam: z.exactOptional(lengthOf('Seam allowance')),
        })
        .register(z.globalRegistry, { description: 'The block that a wanted size is sewn from' }),
    ),
    cuts: z.exactOptional(cutsSchema()),
    fit: z.exactOptional(lengthOf('How near the wanted size must come')),
    washes: z.exactOptional(
      z
        .array(counted('washes', 'A wash count'))
        .check(z.minLength(1), z.maxLength(SIZE_LIMITS.washCounts))
        .register(z.globalRegistry, { description: 'Wash counts to tell sizes for' }),
    ),
    confidence: z.exactOptional(
      z
        .literal([90, 95, 99])
        .register(z.globalRegistry, { description: 'Confidence of the intervals, percent' }),
    ),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof washSchema>>, WashRequest>;

export const washShrinkage = bindEndpoint({
  path: '/v1/wash-shrinkage',
  summary: 'What washing does to cloth that was measured, and what size to sew for a size wished.',
  schema: washSchema,
  resolve: resolveWash,
  mediaType: 'application/json',
  write: (understood) => JSON.stringify(predictWash(understood)),
});
