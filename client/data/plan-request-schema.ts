import * as v from 'valibot';
import type { PlanRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { list, whole, within } from './bounded.ts';
import { SIZE_NAMES } from './names.ts';
import {
  layer,
  length,
  maybe,
  maybeLength,
  maybeOn,
  offer,
  swatch,
  washes,
} from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const limits = NUMBER_LIMITS;

/** What a quilt is to be: its size, its name, its mattress or its grid. */
export const target = v.union([
  v.object({ width: length, height: length, at: maybe(v.picklist(['washed', 'sewn'])) }),
  v.object({ size: v.picklist(SIZE_NAMES), region: maybe(v.picklist(['us', 'uk', 'eu'])) }),
  v.object({
    bed: v.object({ width: length, length, drop: maybeLength, footDrop: maybeLength }),
  }),
  v.object({ columns: whole(limits.columns), rows: whole(limits.rows) }),
]);

const planLayer = v.object({
  ...layer.entries,
  offers: maybe(list(offer, { least: 1, most: SIZE_LIMITS.offers })),
});

/** What a host page or an address may ask for: the shape of a request, every plain number within its range. */
export const planRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  target,
  block: maybe(alike(maybeLength, 'cut', 'seam', 'snipDepth', 'snipPitch')),
  cuts: maybe(list(length, { least: 1, most: SIZE_LIMITS.cuts })),
  layers: maybe(list(planLayer, SIZE_LIMITS.layers)),
  swatches: maybe(list(swatch, { least: 0, most: SIZE_LIMITS.swatches })),
  grain: maybe(v.picklist(['alternating', 'aligned'])),
  washes,
  spare: maybe(within(limits.spare)),
  stitch: maybe(
    v.object({
      length: maybeLength,
      tail: maybeLength,
      link: maybeLength,
      chained: maybeOn,
      borderPasses: maybe(whole(limits.borderPasses)),
      bobbin: maybeLength,
      ratio: maybe(within(limits.ratio)),
    }),
  ),
  pace: maybe(
    alike(
      maybe(within(limits.pace)),
      'cutPiece',
      'stackBlock',
      'sewMetre',
      'handleSeam',
      'snip',
      'layBlock',
      'trimBlock',
    ),
  ),
  tolerance: maybe(alike(maybeLength, 'seam', 'cut', 'ease')),
  infant: maybeOn,
  pupils: maybe(whole(limits.pupils)),
  explain: maybeOn,
});

/** Does not compile once the schema and the contract part. */
export const requestIsBound: SameShape<v.InferOutput<typeof planRequestSchema>, PlanRequest> = true;
