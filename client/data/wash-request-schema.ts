import * as v from 'valibot';
import type { WashRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { list, whole } from './bounded.ts';
import { layer, length, maybe, maybeLength, swatch } from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const maybePair = maybe(alike(length, 'width', 'height'));

/** What an address may ask of a wash: the shape of a request, every plain number within its range. */
export const washRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  swatches: maybe(list(swatch, { least: 0, most: SIZE_LIMITS.swatches })),
  layers: maybe(list(layer, SIZE_LIMITS.layers)),
  grain: maybe(v.picklist(['alternating', 'aligned'])),
  sewn: maybePair,
  wanted: maybePair,
  block: maybe(alike(maybeLength, 'cut', 'seam')),
  cuts: maybe(list(length, { least: 1, most: SIZE_LIMITS.cuts })),
  fit: maybeLength,
  washes: maybe(list(whole(NUMBER_LIMITS.washes), { least: 1, most: SIZE_LIMITS.washCounts })),
  confidence: maybe(v.picklist([90, 95, 99])),
});

/** Does not compile once the schema and the contract part. */
export const washRequestIsBound: SameShape<
  v.InferOutput<typeof washRequestSchema>,
  WashRequest
> = true;
