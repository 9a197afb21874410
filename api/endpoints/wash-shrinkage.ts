import * as z from 'zod';
import type { Swatch, WashRequest } from '#core/contract.ts';
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
  nameOf,
  sidesOf,
  unitSchema,
} from '../http/schemas/wire-schemas.ts';

const swatchSchema = z
  .strictObject({
    fabric: nameOf('What the person calls the cloth').exactOptional(),
    direction: z.enum(['length', 'width']).meta({ description: 'Along or across the roll' }),
    before: lengthOf('Between the marks before washing'),
    after: lengthOf('Between the marks after washing'),
    washes: counted('washes', 'How often it was washed').exactOptional(),
    diagonals: z
      .strictObject({
        ac: lengthOf('One diagonal of a marked square after the wash'),
        bd: lengthOf('The other diagonal'),
      })
      .meta({ description: 'Both diagonals, to tell the skew' })
      .exactOptional(),
  })
  .meta({ description: 'One measured specimen' });
true satisfies Same<z.infer<typeof swatchSchema>, Swatch>;

export const washSchema = z.strictObject({
  unit: unitSchema.exactOptional(),
  swatches: z
    .array(swatchSchema)
    .max(SIZE_LIMITS.swatches)
    .meta({ description: 'What was measured' })
    .exactOptional(),
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
