import * as v from 'valibot';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { line, list, whole, within } from './bounded.ts';
import { FABRIC_NAMES } from './names.ts';

/** A field that may be left out. */
export const maybe = v.exactOptional;
const limits = NUMBER_LIMITS;
/** A length as people write it: a number or a text; what it means is for the core to judge. */
export const length = v.union([within({ least: 0, most: 1e6 }), line(SIZE_LIMITS.lengthText)]);
export const maybeLength = maybe(length);
export const maybeOn = maybe(v.boolean());
export const washes = maybe(whole(limits.washes));

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

/** One layer of the quilt. */
export const layer = v.object({
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

const money = maybe(whole(limits.money));
const name = line(SIZE_LIMITS.name);

/** What a cloth is sold as: a length off the roll, or packs of flat pieces. */
export const offer = v.union([
  v.object({
    kind: v.literal('roll'),
    id: name,
    step: maybeLength,
    least: maybeLength,
    price: money,
  }),
  v.object({
    kind: v.literal('pieces'),
    id: name,
    width: length,
    length,
    count: whole(limits.packCount),
    most: maybe(whole(limits.packs)),
    price: money,
  }),
]);

/** One swatch, measured before and after. */
export const swatch = v.object({
  fabric: maybe(line(SIZE_LIMITS.name)),
  direction: v.picklist(['length', 'width']),
  before: length,
  after: length,
  washes,
  diagonals: maybe(alike(length, 'ac', 'bd')),
});
