import * as v from 'valibot';
import type { PlanRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { line, list, whole, within } from './bounded.ts';
import { FABRIC_NAMES, SIZE_NAMES } from './names.ts';
import type { SameShape } from './same-shape.ts';

const maybe = v.exactOptional;
const limits = NUMBER_LIMITS;
const length = v.union([within({ least: 0, most: 1e6 }), line(SIZE_LIMITS.lengthText)]);
const maybeLength = maybe(length);
const maybeOn = maybe(v.boolean());
const washes = maybe(whole(limits.washes));

const print = v.object({
  id: line(SIZE_LIMITS.name),
  share: maybe(within(limits.share)),
  count: maybe(whole(limits.count)),
  directional: maybeOn,
  width: maybeLength,
  value: maybe(within(limits.value)),
  color: maybe(
    v.pipe(
      v.string(),
      v.check((color) => /^#[\da-f]{6}$/i.test(color), 'bad-name'),
    ),
  ),
});

const layer = v.object({
  role: v.picklist(['top', 'middle', 'backing']),
  fabric: maybe(v.picklist(FABRIC_NAMES)),
  prints: maybe(
    v.union([whole(limits.prints), list(print, { least: 1, most: SIZE_LIMITS.prints })]),
  ),
  width: maybeLength,
  selvage: maybeLength,
  shrink: maybe(alike(within(limits.shrink), 'length', 'width')),
  shrinkWashes: washes,
  prewashed: maybeOn,
  gsm: maybe(within(limits.gsm)),
  thickness: maybe(within(limits.thickness)),
});

const swatch = v.object({
  fabric: maybe(line(SIZE_LIMITS.name)),
  direction: v.picklist(['length', 'width']),
  before: length,
  after: length,
  washes,
  diagonals: maybe(alike(length, 'ac', 'bd')),
});

const target = v.union([
  v.object({ width: length, height: length, at: maybe(v.picklist(['washed', 'sewn'])) }),
  v.object({ size: v.picklist(SIZE_NAMES), region: maybe(v.picklist(['us', 'uk', 'eu'])) }),
  v.object({
    bed: v.object({ width: length, length, drop: maybeLength, footDrop: maybeLength }),
  }),
  v.object({ columns: whole(limits.columns), rows: whole(limits.rows) }),
]);

/** What a host page or an address may ask for: the shape of a request, every plain number within its range. */
export const planRequestSchema = v.object({
  unit: maybe(v.picklist(['in', 'cm'])),
  target,
  block: maybe(alike(maybeLength, 'cut', 'seam', 'snipDepth', 'snipPitch')),
  cuts: maybe(list(length, { least: 1, most: SIZE_LIMITS.cuts })),
  layers: maybe(list(layer, SIZE_LIMITS.layers)),
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
  explain: maybeOn,
});

/** Does not compile once the schema and the contract part. */
export const requestIsBound: SameShape<v.InferOutput<typeof planRequestSchema>, PlanRequest> = true;
