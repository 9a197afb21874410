import * as v from 'valibot';
import type { WashAnswer } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { alike } from './alike.ts';
import { list, within } from './bounded.ts';
import { FABRIC_NAMES } from './names.ts';
import type { Frozen } from './same-shape.ts';

/** Every number has its bounds, since JSON can write one that reads as infinite. */
const number = within({ least: -1e9, most: 1e9 });
const maybeNumber = v.exactOptional(number);
const text = v.string();
const source = v.exactOptional(text);
const many = <Item extends v.GenericSchema>(item: Item) =>
  list(item, { least: 0, most: SIZE_LIMITS.swatches });
const pair = alike(number, 'width', 'height');
const role = v.picklist(['top', 'middle', 'backing']);
const direction = v.picklist(['length', 'width']);

const swatch = v.object({
  fabric: text,
  direction,
  washes: number,
  change: number,
  n: number,
  sd: maybeNumber,
  low: maybeNumber,
  high: maybeNumber,
  nextLow: maybeNumber,
  nextHigh: maybeNumber,
  reading: number,
  skew: v.exactOptional(alike(number, 'mean', 'n', 'lean', 'side')),
  notes: many(v.picklist(['one-specimen', 'coarse-reading', 'grew-back'])),
});

const nearest = v.object({
  cut: number,
  columns: number,
  rows: number,
  sewn: pair,
  washed: pair,
  fit: pair,
});

/** What the page reads of an answer of `/v1/wash-shrinkage`; the rest passes unread. */
export const washAnswerSchema = v.object({
  input: v.object({
    unit: v.picklist(['in', 'cm']),
    swatches: many(
      v.object({ fabric: text, direction, before: number, after: number, washes: number }),
    ),
    layers: many(v.object({ role, fabric: v.picklist(FABRIC_NAMES), prewashed: v.boolean() })),
    grain: text,
    block: alike(number, 'seam'),
    sewn: v.exactOptional(pair),
    wanted: v.exactOptional(pair),
    washes: many(number),
    confidence: number,
  }),
  assumptions: many(v.object({ path: text, value: v.unknown(), why: text, source })),
  cautions: many(
    v.object({ code: text, severity: v.picklist(['note', 'care', 'danger']), text, source }),
  ),
  links: alike(text, 'self', 'page'),
  swatches: many(swatch),
  courses: many(
    v.object({ fabric: text, direction, limit: number, rate: number, error: maybeNumber }),
  ),
  sandwich: many(v.object({ washes: number, change: pair, low: pair, high: pair })),
  sewFor: v.exactOptional(
    v.object({ width: number, height: number, nearest: v.exactOptional(nearest) }),
  ),
  pull: many(
    v.object({
      layer: role,
      length: number,
      width: number,
      says: v.picklist(['tight', 'even', 'puckers']),
    }),
  ),
  doubt: v.object({ percent: pair, blocks: maybeNumber }),
  prewash: v.object({ advised: v.boolean(), why: text, reasons: many(text) }),
});

/** A wash as the page knows it: no view can read what was not checked. */
export type ShownWash = Frozen<v.InferOutput<typeof washAnswerSchema>>;

export type ShownSwatch = ShownWash['swatches'][number];

/** Does not compile once the contract no longer gives what the page reads. */
export const washAnswerIsBound: WashAnswer extends ShownWash ? true : false = true;
