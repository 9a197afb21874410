import * as v from 'valibot';
import type { KitsRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { line, list, whole, within } from './bounded.ts';
import { planRequestSchema } from './plan-request-schema.ts';
import { length, maybe, maybeLength } from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const limits = NUMBER_LIMITS;
const money = maybe(whole(limits.money));
const currency = maybe(
  v.pipe(
    v.string(),
    v.check((code) => /^[A-Z]{3}$/.test(code), 'bad-name'),
  ),
);

const bolt = v.object({
  id: line(SIZE_LIMITS.name),
  role: v.picklist(['top', 'middle', 'backing']),
  print: maybe(line(SIZE_LIMITS.name)),
  width: length,
  length,
  selvage: maybeLength,
  squaring: maybeLength,
  cost: money,
  currency,
});

const fibres = maybe(
  list(v.object({ fibre: line(SIZE_LIMITS.name), percent: within(limits.fibre) }), {
    least: 1,
    most: SIZE_LIMITS.fibres,
  }),
);

/** What an address or a table may ask of kits: the shape of a request, every plain number within its range. */
export const kitsRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  plan: planRequestSchema,
  kits: maybe(whole(limits.kits)),
  bolts: list(bolt, { least: 1, most: SIZE_LIMITS.bolts }),
  perKit: maybe(
    v.object({
      distinctPrints: maybe(whole(limits.distinctPrints)),
      mostOfOne: maybe(whole(limits.mostOfOne)),
      spare: maybe(whole(limits.kitSpare)),
    }),
  ),
  costs: maybe(
    v.object({
      packaging: money,
      labour: money,
      overhead: money,
      margin: maybe(within(limits.margin)),
      markup: maybe(within(limits.markup)),
      price: money,
    }),
  ),
  currency,
  fibres: maybe(alike(fibres, 'top', 'middle', 'backing')),
});

/** Does not compile once the schema and the contract part. */
export const kitsRequestIsBound: SameShape<
  v.InferOutput<typeof kitsRequestSchema>,
  KitsRequest
> = true;
