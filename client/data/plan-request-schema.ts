import * as v from 'valibot';
import type { PlanRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, type Range, SIZE_LIMITS } from '#core/limits.ts';
import { FABRIC_NAMES, SIZE_NAMES } from './names.ts';
import type { SameShape } from './same-shape.ts';

const within = ({ least, most }: Range) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(most));
const whole = (range: Range) => v.pipe(within(range), v.integer());
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(SIZE_LIMITS.name));
const length = v.union([
  v.pipe(v.number(), v.minValue(0), v.maxValue(1e6)),
  v.pipe(v.string(), v.maxLength(SIZE_LIMITS.lengthText)),
]);
const maybe = v.exactOptional;
const limits = NUMBER_LIMITS;

const print = v.strictObject({
  id: name,
  share: maybe(within(limits.share)),
  count: maybe(whole(limits.count)),
  directional: maybe(v.boolean()),
  width: maybe(length),
  value: maybe(within(limits.value)),
  color: maybe(v.pipe(v.string(), v.regex(/^#[\da-f]{6}$/i))),
});

const layer = v.strictObject({
  role: v.picklist(['top', 'middle', 'backing']),
  fabric: maybe(v.picklist(FABRIC_NAMES)),
  prints: maybe(
    v.union([whole(limits.prints), v.pipe(v.array(print), v.minLength(1), v.maxLength(SIZE_LIMITS.prints))]),
  ),
  width: maybe(length),
  selvage: maybe(length),
  shrink: maybe(v.strictObject({ length: within(limits.shrink), width: within(limits.shrink) })),
  shrinkWashes: maybe(whole(limits.washes)),
  prewashed: maybe(v.boolean()),
  gsm: maybe(within(limits.gsm)),
  thickness: maybe(within(limits.thickness)),
});

const target = v.union([
  v.strictObject({ width: length, height: length, at: maybe(v.picklist(['washed', 'sewn'])) }),
  v.strictObject({
    size: v.picklist(SIZE_NAMES),
    region: maybe(v.picklist(['us', 'uk', 'eu'])),
  }),
  v.strictObject({
    bed: v.strictObject({ width: length, length, drop: maybe(length), footDrop: maybe(length) }),
  }),
  v.strictObject({ columns: whole(limits.columns), rows: whole(limits.rows) }),
]);

const pace = maybe(within(limits.pace));

/** What a host page or an address may ask for: the shape of a request, every number bounded. */
export const planRequestSchema = v.strictObject({
  unit: maybe(v.picklist(['in', 'cm'])),
  target,
  block: maybe(
    v.strictObject({
      cut: maybe(length),
      seam: maybe(length),
      snipDepth: maybe(length),
      snipPitch: maybe(length),
    }),
  ),
  cuts: maybe(v.pipe(v.array(length), v.minLength(1), v.maxLength(SIZE_LIMITS.cuts))),
  layers: maybe(v.pipe(v.array(layer), v.minLength(SIZE_LIMITS.layers.least), v.maxLength(SIZE_LIMITS.layers.most))),
  grain: maybe(v.picklist(['alternating', 'aligned'])),
  washes: maybe(whole(limits.washes)),
  spare: maybe(within(limits.spare)),
  stitch: maybe(
    v.strictObject({
      length: maybe(length),
      tail: maybe(length),
      link: maybe(length),
      chained: maybe(v.boolean()),
      borderPasses: maybe(whole(limits.borderPasses)),
      bobbin: maybe(length),
      ratio: maybe(within(limits.ratio)),
    }),
  ),
  pace: maybe(
    v.strictObject({
      cutPiece: pace,
      stackBlock: pace,
      sewMetre: pace,
      handleSeam: pace,
      snip: pace,
      layBlock: pace,
      trimBlock: pace,
    }),
  ),
  tolerance: maybe(
    v.strictObject({ seam: maybe(length), cut: maybe(length), ease: maybe(length) }),
  ),
  explain: maybe(v.boolean()),
});

/** Does not compile once the schema and the contract part. */
export const requestIsBound: SameShape<v.InferOutput<typeof planRequestSchema>, PlanRequest> = true;
