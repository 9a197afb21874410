import * as z from 'zod';
import type { WashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
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

export const washSchema = z.strictObject({
  unit: unitSchema.exactOptional(),
  swatches: swatchesSchema.exactOptional(),
  layers: layersSchema.exactOptional(),
  grain: grainSchema.exactOptional(),
  sewn: sidesOf('Size before washing').exactOptional(),
  wanted: sidesOf('Size wished for after washing').exactOptional(),
  block: z
    .strictObject({
      cut: lengthOf('Side of a block as cut').exactOptional(),
      seam: lengthOf('Seam allowance').exactOptional(),
    })
    .meta({ description: 'The block that a wanted size is sewn from' })
    .exactOptional(),
  cuts: cutsSchema.exactOptional(),
  fit: lengthOf('How near the wanted size must come').exactOptional(),
  washes: z
    .array(counted('washes', 'A wash count'))
    .min(1)
    .max(SIZE_LIMITS.washCounts)
    .meta({ description: 'Wash counts to tell sizes for' })
    .exactOptional(),
  confidence: z
    .literal([90, 95, 99])
    .meta({ description: 'Confidence of the intervals, percent' })
    .exactOptional(),
});
true satisfies Same<z.infer<typeof washSchema>, WashRequest>;

export const washShrinkage = bindEndpoint({
  path: '/v1/wash-shrinkage',
  summary: 'What washing does to cloth that was measured, and what size to sew for a size wished.',
  schema: washSchema,
  resolve: resolveWash,
  mediaType: 'application/json',
  write: (understood) => JSON.stringify(predictWash(understood)),
});
