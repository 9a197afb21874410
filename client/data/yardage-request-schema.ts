import * as v from 'valibot';
import type { YardageRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { line, list, whole, within } from './bounded.ts';
import { length, maybe, maybeLength, maybeOn, offer } from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const name = line(SIZE_LIMITS.name);

const piece = v.object({
  id: name,
  width: length,
  length,
  count: whole(NUMBER_LIMITS.pieceCount),
  directional: maybeOn,
});

const fabric = v.object({
  id: name,
  width: length,
  selvage: maybeLength,
  prewash: maybe(alike(within(NUMBER_LIMITS.shrink), 'length', 'width')),
  squaring: maybeLength,
  step: maybeLength,
  lengthLeft: maybeLength,
  offers: maybe(list(offer, { least: 1, most: SIZE_LIMITS.offers })),
  pieces: list(piece, { least: 1, most: SIZE_LIMITS.pieceKinds }),
});

/** What may be asked of yardage on the device: the shape of a request, every plain number within its range. */
export const yardageRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  fabrics: list(fabric, { least: 1, most: SIZE_LIMITS.fabrics }),
});

/** Does not compile once the contract takes another request than this. */
export const yardageRequestIsBound: SameShape<
  YardageRequest,
  v.InferOutput<typeof yardageRequestSchema>
> = true;
