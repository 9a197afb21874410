import * as v from 'valibot';
import type { StashRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { line, list, whole, within } from './bounded.ts';
import { target } from './plan-request-schema.ts';
import { layer, length, maybe, maybeLength, maybeOn, washes } from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const limits = NUMBER_LIMITS;
const { prints: _prints, width: _width, selvage: _selvage, ...ofLayer } = layer.entries;

const piece = v.object({
  id: line(SIZE_LIMITS.name),
  role: v.picklist(['top', 'middle', 'backing']),
  print: maybe(line(SIZE_LIMITS.name)),
  width: length,
  length,
  count: maybe(whole(limits.stashCount)),
  directional: maybeOn,
  selvage: maybeLength,
});

/** What an address or a table may ask of a stash: the shape of a request, every plain number within its range. */
export const stashRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  pieces: list(piece, { least: 1, most: SIZE_LIMITS.stashPieces }),
  block: maybe(alike(maybeLength, 'cut', 'seam')),
  cuts: maybe(list(length, { least: 1, most: SIZE_LIMITS.cuts })),
  layers: maybe(list(v.object(ofLayer), SIZE_LIMITS.layers)),
  shape: maybe(v.union([v.object({ ratio: within(limits.shapeRatio) }), v.object({ target })])),
  touch: maybe(v.picklist(['sides', 'corners'])),
  grain: maybe(v.picklist(['alternating', 'aligned'])),
  washes,
  squaring: maybeLength,
  usable: maybeLength,
});

/** Does not compile once the schema and the contract part. */
export const stashRequestIsBound: SameShape<
  v.InferOutput<typeof stashRequestSchema>,
  StashRequest
> = true;
