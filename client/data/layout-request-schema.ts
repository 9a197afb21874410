import * as v from 'valibot';
import type { LayoutRequest } from '#core/contract.ts';
import { NUMBER_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { line, list, whole, within } from './bounded.ts';
import { maybe } from './request-parts.ts';
import type { SameShape } from './same-shape.ts';

const print = v.object({
  id: line(SIZE_LIMITS.name),
  count: maybe(whole(NUMBER_LIMITS.count)),
  value: maybe(within(NUMBER_LIMITS.value)),
  color: maybe(
    v.pipe(
      v.string(),
      v.check((color) => /^#[\da-f]{6}$/i.test(color), 'bad-name'),
    ),
  ),
});

/** What may be asked of a layout on the device: the shape of a request, every plain number within its range. */
export const layoutRequestSchema = v.object({
  columns: whole(NUMBER_LIMITS.layoutSide),
  rows: whole(NUMBER_LIMITS.layoutSide),
  prints: list(print, { least: SIZE_LIMITS.layoutPrints, most: SIZE_LIMITS.prints }),
  pattern: maybe(v.picklist(['scattered', 'checkerboard', 'diagonal', 'rings'])),
  touch: maybe(v.picklist(['corners', 'sides'])),
  fixed: maybe(list(line(SIZE_LIMITS.layoutRow), { least: 0, most: SIZE_LIMITS.layoutRow })),
  seed: maybe(whole(NUMBER_LIMITS.seed)),
});

/** Does not compile once the contract takes another request than this. */
export const layoutRequestIsBound: SameShape<
  LayoutRequest,
  v.InferOutput<typeof layoutRequestSchema>
> = true;
